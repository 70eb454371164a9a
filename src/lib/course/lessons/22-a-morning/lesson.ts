import { ft } from '../../items/draw';
import { sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun } from '../runs';

const start = { bait_x_m: ft(60), slack_m: 0.2 };
const breezy = deeperWith({ start, more: { wind_m_s: -7 } });
const drifting = (drift_m_s: number) =>
  lowRun(deeperWith({ start, more: { drift_m_s } }), sweep(60, 78.2, 4));

export default {
  id: 'a-morning',
  order: 22,
  title: 'A morning on Fathomley Water',
  minutes: 8,
  about: 'Slow at first light, then wind, then the fish wake up.',
  place: deepPlace,
  objectives: ['Pick a retrieve and say why.', 'Do three things well, one after another.'],
  leaves_out: ['Landing fish.'],
  claims: [
    {
      says: 'Slack eats some of it.',
      basis: { run: 'question', holds: { travel_m: [0.305, 0.61] } }
    },
    {
      says: 'Slack eats some of it, not all.',
      basis: { run: 'question', holds: { travel_m: [0.305, 0.61] } }
    },
    {
      says: ['Wind in your face adds little', 'A low rod leaves wind little line to push on.'],
      basis: { alike: 'travel_m', of: ['question', 'calm'], unknowns: 'drag' }
    },
    {
      says: [
        'Slow at first light, then wind, then the fish wake up.',
        'from the side it puts a belly in.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: [
    'The wind has brought bait, and fish are on the move.',
    'Wind puts a belly in your line.',
    'Tip down, reel down, then move.'
  ],
  proofs: [{ id: 'calm', run: lowRun(deeperWith({ start }), sweep(60, 78.2, 4)) }],
  builds_on: ['season-and-mood', 'bite-or-bottom', 'snags', 'line-and-rod'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'Held on the trolling motor, wind in your face, about {15 mph|7 m/s}. {8 in|20 cm} of slack in the line, rod low.',
      question: {
        ask: 'You sweep the tip {2 ft|60 cm}, slowly. How far does the jig come?',
        hint: 'How big is the slack beside the sweep?',
        run: lowRun(breezy, sweep(60, 78.2, 4)),
        options: [
          {
            id: 'none',
            says: 'It hardly moves',
            holds: { travel_m: [-0.1, 0.15] },
            reply: 'Slack eats some of it, not all.'
          },
          {
            id: 'part',
            says: 'What’s left after the slack',
            holds: { travel_m: [0.305, 0.61] },
            reply:
              'Right. Slack eats some of it. Wind in your face adds little; from the side it puts a belly in. Tip down, reel down, then move.'
          },
          {
            id: 'more',
            says: 'More: the wind blows it in',
            holds: { travel_m: [0.8, 2] },
            reply: 'A low rod leaves wind little line to push on.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      day: 16,
      demos: [
        { id: 'held', caption: 'Held on the trolling motor.', run: drifting(0) },
        { id: 'away', caption: 'Drifting away from the jig.', run: drifting(-0.15) },
        { id: 'onto', caption: 'Drifting onto it.', run: drifting(0.15) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['first-light', 'wind-comes-up', 'they-wake']
    },
    {
      kind: 'feel',
      title: 'What you’d see',
      cues: [
        {
          sign: 'A belly in the line',
          means: 'Wind. Tip down, reel down, or go heavier.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'On the water',
      needs: ['Your log so far'],
      steps: [
        'First: depth, temperature, wind, and what you pick because of them.',
        'Ten casts, then change one thing.',
        'Explain one choice to somebody.'
      ],
      log: ['One good thing, one fault', 'When you’ll check again']
    }
  ]
};
