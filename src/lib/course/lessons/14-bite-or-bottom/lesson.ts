import type { Bite } from '../../../model';
import { sweep } from '../../retrieves/moves';
import { waterWith, place, onTheWater } from '../fathomley';
import { lowRun } from '../runs';

const withBite = (kind: Bite['kind'], t_s: number) =>
  waterWith({ start: { bait_x_m: 12, slack_m: 0.03 }, more: { bites: [{ t_s, kind }] } });

export default {
  id: 'bite-or-bottom',
  order: 14,
  title: 'Bite or bottom',
  minutes: 13,
  about:
    'A tap, mush, weight that is gone, a line that moves off. Or a stone. The bottom holds steady, fish move. When in doubt: reel down, test, and sweep firmly.',
  place,
  objectives: ['Tell what moves from what holds.', 'Answer a bite in time, and only a bite.'],
  leaves_out: ['Playing and landing fish.'],
  builds_on: ['reading-bottoms', 'slack'],
  cautions: onTheWater,
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'You hold still. A fish has taken the jig and swims off.',
      question: {
        ask: 'What does the jig do?',
        hint: 'The rod is still, so one thing only moves. Which way does it swim, and what does it take along?',
        run: lowRun(withBite('moving off', 1), sweep(60, 60, 0.5), 4),
        options: [
          {
            id: 'still',
            says: 'It lies still',
            holds: { travel_m: [-0.03, 0.03] },
            reply: 'A stone does that. What holds steady is bottom.'
          },
          {
            id: 'away',
            says: 'It goes away from you',
            holds: { travel_m: [-20, -0.08] },
            reply: 'What moves while you hold still is alive.'
          },
          {
            id: 'towards',
            says: 'It comes towards you',
            holds: { travel_m: [0.1, 5] },
            reply: 'It may, with another fish: then the weight is gone.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'Three bites and one stone. Watch the pull at the tip.',
      demos: [
        { id: 'tap', caption: 'A tap.', run: lowRun(withBite('tap', 2), sweep(60, 64, 1), 4) },
        { id: 'mush', caption: 'Mush.', run: lowRun(withBite('mush', 2), sweep(60, 64, 1), 4) },
        {
          id: 'gone',
          caption: 'The weight is gone.',
          run: lowRun(withBite('weight gone', 2), sweep(60, 64, 1), 4)
        },
        {
          id: 'stone',
          caption: 'A stone.',
          run: lowRun(
            waterWith({
              bottom: {
                friction: 0.4,
                stones: [
                  { x_m: 11.7, width_m: 0.24, height_m: 0.05 },
                  { x_m: 11.35, width_m: 0.3, height_m: 0.08 }
                ]
              },
              start: { bait_x_m: 12, slack_m: 0.03 }
            }),
            sweep(60, 78, 4)
          )
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Drag a little, then wait for it. Sweep as soon as the line tells you.',
      challenges: ['strike-a-tap', 'strike-a-lost-weight']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'A tap while you do nothing', means: 'A fish: nothing else taps a resting jig.' },
        { sign: 'Mush', means: 'Weed, or a fish that has it: test.' },
        { sign: 'Weight gone', means: 'A fish has come towards you: reel, then sweep.' },
        { sign: 'It holds, and holds', means: 'Bottom. Do not strike: ease it off.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A friend with the other end of the line, no hook'],
      steps: [
        'Your friend taps, pulls softly, or does nothing, in any order.',
        'Say what it is, then answer with the rod.',
        'Twenty times. Count what you missed and what you imagined.'
      ],
      log: ['Missed, imagined, right', 'Which of the four you mix up']
    }
  ]
};
