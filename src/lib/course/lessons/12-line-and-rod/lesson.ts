import { ft } from '../../items/draw';
import { lift, sweep } from '../../retrieves/moves';
import { deeperWith, deepPlace, drillCautions } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const mono = { material: 'nylon', diameter_m: 0.00032 } as const;
const braid = {
  material: 'braid',
  diameter_m: 0.00023,
  leader: { material: 'fluorocarbon', diameter_m: 0.00028, length_m: 2 }
} as const;
const farOut = { bait_x_m: ft(85), slack_m: 0.05 };
const snapOn = (line?: Parameters<typeof deeperWith>[0]['line']) =>
  uprightRun(deeperWith({ start: farOut, ...(line && { line }) }), 10, lift(10, 55, 0.5));
const hopWith = (tip_stiffness_N_per_m: number) =>
  uprightRun(deeperWith({ start: farOut, tip_stiffness_N_per_m }), 10, lift(10, 55, 0.5));

export default {
  id: 'line-and-rod',
  order: 12,
  title: 'Line and rod',
  minutes: 6,
  about:
    'Fluorocarbon sinks, braid floats. Mono and fluorocarbon stretch, braid hardly does. Find out when that matters.',
  place: deepPlace,
  objectives: ['Know when stretch and rod bend matter.', 'Adjust a hop for a soft rod.'],
  leaves_out: ['Knots and wear.'],
  claims: [
    {
      says: 'A slow drag hardly loads the line.',
      basis: { run: 'question', holds: { travel_m: [0.8, 0.95] } }
    },
    {
      says: [
        'On smooth bottom a slow drag pulls with less than the jig weighs.',
        'Mono gives up half only on a far harder pull.'
      ],
      // Half an ounce is 0.139 N; the jig is 5/8 oz.
      basis: { run: 'question', holds: { pull_N: [0, 0.139] } }
    },
    {
      says: 'On a tight line nearly all of it gets there.',
      basis: { run: 'question', holds: { travel_m: [0.8, 0.95] } }
    },
    {
      says: [
        'Stretch matters on hops and hook sets.',
        'Mono and fluorocarbon stretch, braid hardly does.',
        'it goes highest.',
        'Find out when that matters.'
      ],
      basis: { most: 'peak_height_m', of: ['braid', 'mono'], unknowns: 'drag' }
    },
    {
      says: 'Mono and fluorocarbon come out alike.',
      basis: { alike: 'peak_height_m', of: ['fluoro', 'mono'], unknowns: 'drag' }
    },
    {
      says: 'not as high.',
      basis: { most: 'peak_height_m', of: ['braid', 'fluoro'], unknowns: 'drag' }
    },
    {
      says: 'lower still.',
      basis: { most: 'peak_height_m', of: ['stiff-rod', 'soft-rod'], unknowns: 'drag' }
    },
    {
      says: [
        'Fluorocarbon sinks, braid floats.',
        'Only with slack in the line.',
        'a knot that slips comes back at you.'
      ],
      basis: 'practice'
    }
  ],
  sets_up: ['Lower the rod with it.'],
  proofs: [
    { id: 'mono', run: snapOn(mono) },
    { id: 'stiff-rod', run: hopWith(20) }
  ],
  builds_on: ['slack', 'hops'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'You drag {3 ft|90 cm} of tip, slowly, jig {45 ft|14 m} out.',
      question: {
        ask: 'How far does the jig come on 12-lb mono?',
        hint: 'How hard does a slow drag pull?',
        say: 'feet',
        run: lowRun(
          deeperWith({ line: mono, start: { bait_x_m: ft(45), slack_m: 0.05 } }),
          sweep(60, 87.5, 6)
        ),
        options: [
          {
            id: 'most',
            says: 'Nearly all of it',
            holds: { travel_m: [0.8, 0.95] },
            reply:
              'Right. A slow drag hardly loads the line. Stretch matters on hops and hook sets.'
          },
          {
            id: 'half',
            says: 'About half',
            holds: { travel_m: [0.4, 0.65] },
            reply:
              'Mono gives up half only on a far harder pull. On smooth bottom a slow drag pulls with less than the jig weighs.'
          },
          {
            id: 'none',
            says: 'Next to nothing',
            holds: { travel_m: [-0.05, 0.2] },
            reply: 'Only with slack in the line. On a tight line nearly all of it gets there.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'The same quick lift, {85 ft|26 m} out. Mono and fluorocarbon come out alike.',
      demos: [
        { id: 'braid', caption: '20-lb braid, leader: it goes highest.', run: snapOn(braid) },
        { id: 'fluoro', caption: '12-lb fluorocarbon: not as high.', run: snapOn() },
        { id: 'soft-rod', caption: 'Soft tip, on fluorocarbon: lower still.', run: hopWith(4) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['soft-rod-hop', 'braid-drag']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      cues: [
        {
          sign: 'Everything soft and late',
          means: 'Mono or fluorocarbon, a soft rod, or slack.',
          basis: { most: 'pull_N', of: ['stiff-rod', 'soft-rod'], unknowns: 'drag' }
        },
        { sign: 'Every pebble is loud', means: 'You’re on braid.', basis: 'practice' },
        {
          sign: 'A belly of line on the surface',
          means: 'Braid in wind. Tip down, reel down.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: [
        'Your rod, and line of known pound test',
        'A spring scale on a post, a phone filming it',
        'Glasses for everyone'
      ],
      steps: [
        'Everyone else well off to the side. You pull to the side, face turned away: a knot that slips comes back at you.',
        'Film the scale. Pull it as you’d hop, then as you’d drag.'
      ],
      log: ['Both readings', 'What you’d change, and why']
    }
  ]
};
