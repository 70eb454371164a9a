import type { GroundKind } from '../../../model';
import { sweep } from '../../retrieves/moves';
import { waterWith, place, onTheWater, cautions } from '../fathomley';
import { lowRun } from '../runs';

/** The same drag over each kind of bottom. */
const on = (kind: GroundKind) =>
  waterWith({ bottom: { ground: { kind, seed: 3 } }, start: { bait_x_m: 12, slack_m: 0.03 } });

export default {
  id: 'reading-bottoms',
  order: 13,
  title: 'Reading bottoms',
  minutes: 14,
  about:
    'Mud, sand, gravel, rock, brush, grass: each has a voice in the line. With a slow, even drag you can tell them apart unseen. With a fast one they all sound alike.',
  place,
  objectives: ['Name a bottom from what you feel.', 'Drag slowly enough to tell.'],
  leaves_out: ['Which bottom holds fish today.'],
  builds_on: ['feeling-rocks'],
  cautions: [...onTheWater, cautions.snag],
  sections: [
    {
      kind: 'predict',
      title: 'Say it first',
      text: 'The jig has sunk into mud a little.',
      question: {
        ask: 'You sweep {length:0.35} of tip, slowly. How does the jig come?',
        hint: 'The line goes on pulling, and the pull grows. How long can mud hold against it?',
        run: lowRun(on('mud'), sweep(60, 71, 4)),
        options: [
          {
            id: 'smooth',
            says: 'It comes by nearly as much, after a late start',
            holds: { travel_m: [0.2, 0.42] },
            reply:
              'Mud holds until the pull is great enough, then it lets go and gives the jig back what the rod has stored.'
          },
          {
            id: 'stuck',
            says: 'It stays',
            holds: { travel_m: [-0.02, 0.1] },
            reply: 'Mud sucks, but not so hard. A slow pull gets it out.'
          },
          {
            id: 'leap',
            says: 'It leaps twice as far',
            holds: { travel_m: [0.55, 2] },
            reply: 'So it does when it is torn out.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same slow drag on five bottoms. Watch the pull at the tip.',
      demos: [
        { id: 'mud', caption: 'Mud.', run: lowRun(on('mud'), sweep(60, 90, 8)) },
        { id: 'sand', caption: 'Sand.', run: lowRun(on('sand'), sweep(60, 90, 8)) },
        { id: 'gravel', caption: 'Gravel.', run: lowRun(on('gravel'), sweep(60, 90, 8)) },
        { id: 'rock', caption: 'Chunk rock.', run: lowRun(on('chunk rock'), sweep(60, 90, 8)) },
        { id: 'grass', caption: 'Grass.', run: lowRun(on('grass'), sweep(60, 90, 8)) }
      ]
    },
    {
      kind: 'try',
      title: 'Your hand',
      text: 'Three bottoms, one pace: slow.',
      challenges: ['out-of-the-mud', 'over-gravel', 'through-grass']
    },
    {
      kind: 'feel',
      title: 'What you would feel',
      text: 'On the water nobody shows you the jig. The line does.',
      cues: [
        { sign: 'Dull, heavy, a sucking start', means: 'Mud.' },
        { sign: 'Smooth, firm, tacky', means: 'Clay.' },
        { sign: 'An even, faint hiss', means: 'Sand.' },
        { sign: 'Fine rapid ticks', means: 'Gravel.' },
        { sign: 'Knocks, climbs and drops, wedging', means: 'Chunk rock.' },
        { sign: 'A long load, then a free drop', means: 'Boulders.' },
        { sign: 'A springy load that slips off', means: 'Brush.' },
        { sign: 'A solid thud, a sudden stop', means: 'A stump.' },
        { sign: 'A mushy build-up, a crisp release', means: 'Grass.' }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'A screen does not make a hand. This does.',
      needs: ['A jig you can spare', 'Somebody who knows the water, or a sounder to check with'],
      steps: ['Eyes shut, one slow drag. Name the bottom aloud.', 'Check it.', 'Ten places.'],
      log: ['Ten names, and how many were right', 'Which two you mix up']
    }
  ]
};
