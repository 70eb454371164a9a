import { ft } from '../../items/draw';
import { lift, sweep } from '../../retrieves/moves';
import { drillCautions, fathomley, place, waterWith } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const tight = waterWith({ start: { bait_x_m: ft(30), slack_m: 0.02 } });
const loose = waterWith({ start: { bait_x_m: ft(30), slack_m: 0.6 } });
const tightFarOut = waterWith({ start: { bait_x_m: ft(45), slack_m: 0.02 } });
const bowed = { ...fathomley, start: { bait_x_m: ft(45), horizontal_tension_N: 0.006 } };

export default {
  id: 'slack',
  order: 3,
  title: 'Slack',
  minutes: 8,
  about:
    'Slack is loose line between rod tip and jig. It decides how much of a move reaches the jig. The reel picks up slack; the rod moves the jig.',
  place,
  objectives: [
    'Know what slack takes from a drag.',
    'Reel up slack, or shake it, without moving the jig.'
  ],
  leaves_out: ['Slack from wind and drift.'],
  claims: [
    {
      says: 'it comes {2 ft|60 cm}.',
      basis: { run: 'tight', holds: { travel_m: [0.5, 0.72] }, unknowns: 'drag' }
    },
    {
      says: 'it comes less far.',
      basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
    },
    {
      says: 'It decides how much of a move reaches the jig.',
      basis: { most: 'travel_m', of: ['tight', 'slack'], unknowns: 'drag' }
    },
    {
      says: [
        'Here slack takes its share first.',
        'Slack comes out first, and the jig gets the rest.'
      ],
      basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
    },
    { says: 'Slack is loose line between rod tip and jig.', basis: 'practice' },
    { says: 'The reel picks up slack; the rod moves the jig.', basis: 'practice' },
    {
      says: 'Only on a tight line.',
      basis: { run: 'tight', holds: { travel_m: [0.48, 0.75] }, unknowns: 'drag' }
    },
    {
      says: ['Your sweep is longer than the slack: the jig comes late, and less.'],
      basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
    }
  ],
  sets_up: ['The line has about {1 ft|30 cm} of slack.', 'There’s slack in the line.'],
  proofs: [
    { id: 'tight-lift', run: uprightRun(tight, 10, lift(10, 40, 0.5)) },
    { id: 'slack-lift', run: uprightRun(loose, 10, lift(10, 40, 0.5)) }
  ],
  builds_on: ['one-foot', 'your-hands-ruler'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'The line has about {1 ft|30 cm} of slack.',
      question: {
        ask: 'You sweep the tip {2 ft|60 cm}, slowly. How far does the jig come?',
        hint: 'What must the sweep take up before the jig feels anything?',
        say: 'inches',
        run: lowRun(bowed, sweep(60, 78.2, 4)),
        options: [
          {
            id: 'all',
            says: 'About {2 ft|60 cm}',
            holds: { travel_m: [0.52, 0.75] },
            reply: 'Only on a tight line. Here slack takes its share first.'
          },
          {
            id: 'part',
            says: 'About {1 ft|30 cm}',
            holds: { travel_m: [0.23, 0.38] },
            reply: 'Right. Slack comes out first, and the jig gets the rest.'
          },
          {
            id: 'none',
            says: 'Not at all',
            holds: { travel_m: [-0.05, 0.06] },
            reply: 'Your sweep is longer than the slack: the jig comes late, and less.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        {
          id: 'tight',
          caption: 'Just tight: it comes {2 ft|60 cm}.',
          run: lowRun(tightFarOut, sweep(60, 78.2, 4))
        },
        {
          id: 'slack',
          caption: '{1 ft|30 cm} of slack: it comes less far.',
          run: lowRun(bowed, sweep(60, 78.2, 4))
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['through-the-slack', 'reel-takes-slack', 'shake-in-place']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'You move and feel nothing',
          means: 'You’re moving slack.',
          basis: { most: 'pull_N', of: ['tight-lift', 'slack-lift'], unknowns: 'drag' }
        },
        {
          sign: 'Weight comes on soft and late',
          means: 'The belly, the line’s sag, is straightening.',
          basis: { run: 'question', holds: { travel_m: [0.23, 0.38] } }
        },
        {
          sign: 'You reel and feel weight at once',
          means: 'There was no slack. The reel moves the jig.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, a jig with the hook cut off', 'A tape measure'],
      steps: [
        'Line just tight. Sweep one foot, look.',
        'Swing the rod forward, don’t reel. Sweep again, look.',
        'Swing forward and reel until the line just lifts off the ground. Sweep, look.'
      ],
      log: ['How far it came, three numbers']
    }
  ]
};
