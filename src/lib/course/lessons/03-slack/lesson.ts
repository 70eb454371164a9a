import { lift, sweep } from '../../retrieves/moves';
import { drillCautions, fathomley, place, waterWith } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const tight = waterWith({ start: { bait_x_m: 10, slack_m: 0.02 } });
const loose = waterWith({ start: { bait_x_m: 10, slack_m: 0.6 } });
const bowed = { ...fathomley, start: { bait_x_m: 14, horizontal_tension_N: 0.007 } };

export default {
  id: 'slack',
  order: 3,
  title: 'Slack',
  minutes: 8,
  about:
    'The same move drags the jig, or hardly moves it. Slack makes the difference, and you can’t see it. The reel takes up slack; the rod moves the jig.',
  place,
  objectives: [
    'Know what slack does to a drag and to a hop.',
    'Reel up slack without moving the jig.'
  ],
  leaves_out: ['Slack that wind and drift make: the lesson on wind.'],
  claims: [
    {
      says: 'Slack makes the difference, and you can’t see it.',
      basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'The belly takes its share first.',
      basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
    },
    { says: 'The reel takes up slack; the rod moves the jig.', basis: 'practice' },
    {
      says: 'The same move drags the jig, or hardly moves it.',
      basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'On a tight line, yes.',
      basis: { run: 'tight-drag', holds: { travel_m: [0.48, 0.75] }, unknowns: 'drag' }
    },
    {
      says: [
        'Here the first part of your move straightens the belly.',
        'The jig gets what’s left.',
        'What’s left reaches the jig.',
        'You feel nothing at first, and that fools you.',
        'This belly is smaller than your sweep, so the jig comes late, and less.'
      ],
      basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
    }
  ],
  proofs: [{ id: 'tight-drag', run: lowRun(tight, sweep(60, 78.2, 4)) }],
  builds_on: ['one-foot', 'your-hands-ruler'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'The line has a belly in it, about {1 ft|30 cm} of slack. You feel almost no weight.',
      question: {
        ask: 'You sweep the tip {2 ft|60 cm}, slowly. How far does the jig come?',
        hint: 'What must the sweep take up before the jig feels anything? Is that all of the sweep?',
        run: lowRun(bowed, sweep(60, 78.2, 4)),
        options: [
          {
            id: 'all',
            says: 'All of it: {2 ft|60 cm}',
            holds: { travel_m: [0.52, 0.75] },
            reply:
              'On a tight line, yes. Here the first part of your move straightens the belly. The jig gets what’s left.'
          },
          {
            id: 'part',
            says: 'About half: {1 ft|30 cm}',
            holds: { travel_m: [0.23, 0.38] },
            reply: 'Right. The belly takes its share first. What’s left reaches the jig.'
          },
          {
            id: 'none',
            says: 'It doesn’t move',
            holds: { travel_m: [-0.05, 0.06] },
            reply:
              'You feel nothing at first, and that fools you. This belly is smaller than your sweep, so the jig comes late, and less.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One lift on two lines. Only the slack differs.',
      demos: [
        { id: 'tight', caption: 'Just tight.', run: uprightRun(tight, 10, lift(10, 40, 0.5)) },
        {
          id: 'slack',
          caption: '{2 ft|60 cm} of slack.',
          run: uprightRun(loose, 10, lift(10, 40, 0.5))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'Three tries. Pull through the slack; let the reel take it; shake the jig in place.',
      challenges: ['through-the-slack', 'reel-takes-slack', 'shake-in-place']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      text: 'Before every move, find out how much slack you have.',
      cues: [
        {
          sign: 'You move and feel nothing',
          means: 'You’re moving slack.',
          basis: { most: 'pull_N', of: ['tight', 'slack'], unknowns: 'drag' }
        },
        {
          sign: 'Weight comes on soft and late',
          means: 'The belly is straightening.',
          basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
        },
        {
          sign: 'You reel and feel weight at once',
          means: 'There was no slack. You’re moving the jig with the reel.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'Three sweeps on the lawn.',
      needs: ['Your rod, a jig with the hook cut off', 'A tape measure'],
      steps: [
        'Line just tight. Sweep one foot, look.',
        'Turn the rod back, don’t reel. Sweep again, look.',
        'Turn back and reel until the line just leaves the grass. Sweep, look.'
      ],
      log: ['How far it came, three numbers', 'On the water: turns of the reel after each drag']
    }
  ]
};
