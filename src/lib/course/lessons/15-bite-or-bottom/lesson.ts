import { ft } from '../../items/draw';
import type { Bite } from '../../../model';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const withBite = (kind: Bite['kind'], t_s: number) =>
  deeperWith({ start: { bait_x_m: ft(40), slack_m: 0.03 }, more: { bites: [{ t_s, kind }] } });
const rocks = deeperWith({
  bottom: {
    friction: 0.4,
    stones: [
      { x_m: ft(40) - 0.3, width_m: 0.24, height_m: 0.05 },
      { x_m: ft(40) - 0.65, width_m: 0.3, height_m: 0.08 }
    ]
  },
  start: { bait_x_m: ft(40), slack_m: 0.03 }
});

export default {
  id: 'bite-or-bottom',
  order: 15,
  title: 'Bite or bottom',
  minutes: 6,
  about: 'Fish or rock? Hold the rod still and find out.',
  place: deepPlace,
  objectives: ['Tell what moves from what holds.', 'Set on a bite in time, and only on a bite.'],
  leaves_out: ['Fighting and landing fish.'],
  claims: [
    {
      says: ['The rod is still, so only one thing moves.'],
      basis: { run: 'question', holds: { travel_m: [-20, -0.08] } }
    },
    {
      says: 'Bottom holds still; fish move.',
      basis: { run: 'question', holds: { travel_m: [-20, -0.08] } }
    },
    {
      says: [
        'rod still, and a knock.',
        'Rod still, and the words turn to “a knock”: that’s the tap.'
      ],
      basis: { run: 'tap', sign: 'bite' }
    },
    { says: 'a soft load that stays.', basis: { run: 'mush', sign: 'bite' } },
    { says: 'the load goes, and nothing is left.', basis: { run: 'gone', sign: 'bite' } },
    {
      says: 'it loads and lets go while the rod moves. Nothing after.',
      basis: { run: 'rock', sign: 'knocks' }
    },
    {
      says: ['This goes:', 'This goes away.'],
      basis: { run: 'question', holds: { travel_m: [-20, -0.08] } }
    },
    {
      says: [
        'A rock stays.',
        'Small fish peck, too, and a rocking boat tugs.',
        'treat it as a fish.',
        'A rock stays put and slack falls toward you.',
        'On a drifting boat it could be drift, too.',
        'Slack falls toward you.',
        'When in doubt: reel down and test. Sweep if it moves or pulls.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'A friend holds the rag, loosely, never the line.',
    'The line slides away from you.',
    'A friend taps the rag, pulls it softly, or does nothing.',
    'Drag {6 in|15 cm} or more, slowly, line tight.',
    'Drag {6 in|15 cm} or more, then wait.',
    'When the tap comes, sweep firmly.',
    'When the weight goes away, reel down and sweep.',
    'Hold the rod still and find out.',
    'Read on the picture what comes up the line, or turn Feel on and hear it.'
  ],
  builds_on: ['reading-bottoms', 'slack'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Boat held, rod still. The line slides away from you.',
      question: {
        ask: 'What’s on it?',
        hint: 'The rod is still, so only one thing moves.',
        run: lowRun(withBite('moving off', 1), sweep(60, 60, 0.5), 4),
        options: [
          {
            id: 'still',
            says: 'A rock',
            holds: { travel_m: [-0.03, 0.03] },
            reply: 'A rock stays. This goes: treat it as a fish.'
          },
          {
            id: 'away',
            says: 'A fish',
            holds: { travel_m: [-20, -0.08] },
            reply:
              'Right. A rock stays put and slack falls toward you. This goes away. On a drifting boat it could be drift, too.'
          },
          {
            id: 'toward',
            says: 'Nothing: slack settling',
            holds: { travel_m: [0.1, 5] },
            reply: 'Slack falls toward you. This goes: treat it as a fish.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it, hear it',
      text: 'Read on the picture what comes up the line, or turn Feel on and hear it.',
      isFelt: true,
      demos: [
        {
          id: 'tap',
          caption: 'A tap: rod still, and a knock.',
          run: lowRun(withBite('tap', 2), sweep(60, 64, 1), 4)
        },
        {
          id: 'mush',
          caption: 'Mush: a soft load that stays.',
          // It ends while the fish holds on: it lets go after 2 s, and that is what is shown next.
          run: lowRun(withBite('mush', 2), sweep(60, 64, 1), 2.6)
        },
        {
          id: 'gone',
          caption: 'Lost weight: the load goes, and nothing is left.',
          run: lowRun(withBite('weight gone', 2), sweep(60, 64, 1), 4)
        },
        {
          id: 'rock',
          caption: 'A rock: it loads and lets go while the rod moves. Nothing after.',
          run: lowRun(rocks, sweep(60, 78, 4))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Rod still, and the words turn to “a knock”: that’s the tap.',
      challenges: ['strike-a-tap', 'strike-a-lost-weight']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      text: 'Bottom holds still; fish move. When in doubt: reel down and test. Sweep if it moves or pulls.',
      cues: [
        {
          sign: 'A tap or tick while you hold still',
          means: 'Treat it as a bite. Small fish peck, too, and a rocking boat tugs.',
          basis: { run: 'tap', sign: 'bite' }
        },
        {
          sign: 'Mush',
          means: 'Weeds, or a fish that has it. Test.',
          basis: { run: 'mush', sign: 'bite' }
        },
        {
          sign: 'Lost weight',
          means: 'Boat held, a fish came toward you. Reel, then sweep.',
          basis: { run: 'gone', sign: 'bite' }
        },
        { sign: 'A thump, then weight', means: 'It’s loaded up. Sweep.', basis: 'practice' },
        {
          sign: 'Solid and dead',
          means: 'Bottom. Don’t set; ease into it once before you quit on it.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A rag'],
      steps: [
        'Clip the line to the rag. A friend holds the rag, loosely, never the line.',
        'A friend taps the rag, pulls it softly, or does nothing.',
        'Call it. A bite: reel down and say “sweep”, the rod still. Twenty times.'
      ],
      log: ['Missed, imagined, right', 'Which ones you mix up']
    }
  ]
};
