import { ft } from '../../items/draw';
import { lift, shortHop, threeHops } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { uprightRun } from '../runs';

/** 45 ft out in 20 ft of water. */
const out = deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } });
const quick = uprightRun(out, 30, shortHop);

export default {
  id: 'hops',
  order: 10,
  title: 'Hops',
  minutes: 10,
  about:
    'A hop is a short, quick lift, a fall, and a rest. How far and how fast the tip goes both make height.',
  place: deepPlace,
  objectives: [
    'Hop the jig to a height you called.',
    'Make three hops with even rests, and with uneven ones.'
  ],
  leaves_out: ['Strokes.'],
  claims: [
    {
      says: ['The line can’t give it more than the tip took.'],
      basis: { run: 'quick', holds: { peak_height_m: [0, 0.4] } }
    },
    {
      says: 'How far and how fast the tip goes both make height.',
      basis: { most: 'peak_height_m', of: ['longer', 'quick', 'slow'] }
    },
    {
      says: 'Slow, it drags.',
      basis: { run: 'slow', holds: { peak_height_m: [0, 0.02] } }
    },
    {
      says: 'Quick, it hops.',
      basis: { run: 'quick', holds: { peak_height_m: [0.1, 0.26] } }
    },
    {
      says: 'The line pulls mostly toward you, so it travels more than it climbs.',
      basis: { run: 'quick', holds: { travel_m: [0.4, 0.6], peak_height_m: [0.1, 0.26] } }
    },
    {
      says: 'It can’t climb more than the tip moved.',
      basis: { run: 'quick', holds: { peak_height_m: [0, 0.4] } }
    },
    {
      says: [
        'A hop is a short, quick lift, a fall, and a rest.',
        'Guides see more height than the model.',
        'Guides see more height than the model, but not that much.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: ['Lower the rod with it.'],
  proofs: [{ id: 'longer', run: uprightRun(out, 30, lift(30, 60, 0.5)) }],
  builds_on: ['the-clock', 'slack'],
  cautions: [drillCautions.both],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: '{5/8 oz|18 g}, {45 ft|14 m} out in {20 ft|6 m}. Rod at ten, line just tight. You snap up {15 in|40 cm} of tip.',
      question: {
        ask: 'How high does the jig come up?',
        hint: 'The line can’t give it more than the tip took.',
        run: quick,
        options: [
          {
            id: 'not',
            says: 'It hardly leaves bottom',
            holds: { peak_height_m: [0, 0.03] },
            reply: 'Slow, it drags. Quick, it hops. Guides see more height than the model.'
          },
          {
            id: 'hand',
            says: '{4 to 10 in|10 to 25 cm}',
            holds: { peak_height_m: [0.1, 0.26] },
            reply:
              'Right. The line pulls mostly toward you, so it travels more than it climbs. Guides see more height than the model.'
          },
          {
            id: 'knee',
            says: 'About {2 ft|60 cm}',
            holds: { peak_height_m: [0.46, 0.76] },
            reply:
              'It can’t climb more than the tip moved. Guides see more height than the model, but not that much.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'quick', caption: 'Quick.', run: quick },
        { id: 'slow', caption: 'Slow.', run: uprightRun(out, 30, lift(30, 42, 2)) },
        {
          id: 'three',
          caption: 'Three hops, a rest after each.',
          run: uprightRun(out, 30, threeHops)
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['one-hop', 'three-hops-even', 'three-hops-uneven', 'three-hops-sideways']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'A tick after the hop',
          means: 'It’s back on bottom.',
          basis: { run: 'quick', sign: 'one hop' }
        },
        {
          sign: 'No tick',
          means: 'It never left, hasn’t landed, or landed soft: see if the line went slack.',
          basis: { run: 'slow', holds: { peak_height_m: [0, 0.02] } }
        },
        {
          sign: 'Line jumps or stops short on the fall',
          means: 'It jumps: a fish. Reel down and sweep. It stops short: reel down and test.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['Your rod, no hook', 'A tape measure'],
      steps: [
        'Ten quick lifts of {15 in|40 cm} along the tape.',
        'On the water: one hop, count to the landing.',
        'Three hops, even rests. Then uneven.'
      ],
      log: ['Count from hop to landing', 'Which rhythm got bites']
    }
  ]
};
