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
    'Fluorocarbon sinks. Mono stretches and nearly floats. Braid floats and hardly stretches. How much of that reaches the jig depends on how fast you move.',
  place: deepPlace,
  objectives: ['Know when stretch and rod bend matter.', 'Adjust a hop for a soft rod.'],
  leaves_out: ['Knots and wear.'],
  claims: [
    { says: ['That pull is what stretches line.'], basis: 'practice' },
    {
      says: 'How much of that reaches the jig depends on how fast you move.',
      basis: { most: 'peak_height_m', of: ['braid', 'mono'], unknowns: 'drag' }
    },
    {
      says: 'A slow drag hardly loads the line, so it hardly stretches.',
      basis: { run: 'question', holds: { travel_m: [0.8, 0.95] } }
    },
    {
      says: 'A slow drag pulls with less than half an ounce',
      // Half an ounce is 0.139 N.
      basis: { run: 'question', holds: { pull_N: [0, 0.139] } }
    },
    {
      says: 'and loses an inch or two.',
      // The tip goes 0.904 m. Slack would take more: the words are about a tight line.
      basis: { run: 'question', holds: { travel_m: [0.853, 0.878] }, unknowns: 'drag' }
    },
    {
      says: 'Mono only gives that much on a far harder pull.',
      basis: { run: 'question', holds: { pull_N: [0, 0.139] } }
    },
    {
      says: 'On a tight line nearly all of it gets there.',
      basis: { run: 'question', holds: { travel_m: [0.8, 0.95] } }
    },
    {
      says: [
        'Stretch matters on hops and hook sets.',
        'Mono stretches and nearly floats.',
        'Braid floats and hardly stretches.'
      ],
      basis: { most: 'peak_height_m', of: ['braid', 'mono'], unknowns: 'drag' }
    },
    {
      says: 'Mono and fluorocarbon come out alike.',
      basis: { alike: 'peak_height_m', of: ['fluoro', 'mono'], unknowns: 'drag' }
    },
    {
      says: ['Fluorocarbon sinks.', 'Slack would do that, not stretch.'],
      basis: 'practice'
    }
  ],
  sets_up: ['Lower the rod with it.', 'Know what your gear hides.'],
  builds_on: ['slack', 'hops'],
  cautions: [drillCautions.dry],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: 'You drag {3 ft|90 cm} of tip in 6 seconds, jig {45 ft|14 m} out.',
      question: {
        ask: 'How far does the jig come on 12-lb mono?',
        hint: 'How hard does a slow drag pull? Hang that weight on a line in your mind.',
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
              'Right. A slow drag hardly loads the line, so it hardly stretches. Stretch matters on hops and hook sets.'
          },
          {
            id: 'half',
            says: 'About half',
            holds: { travel_m: [0.4, 0.65] },
            reply:
              'Mono only gives that much on a far harder pull. A slow drag pulls with less than half an ounce, and loses an inch or two.'
          },
          {
            id: 'none',
            says: 'Next to nothing',
            holds: { travel_m: [-0.05, 0.2] },
            reply: 'Slack would do that, not stretch. On a tight line nearly all of it gets there.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One snap, {85 ft|26 m} out. Mono and fluorocarbon come out alike.',
      demos: [
        { id: 'braid', caption: '20-lb braid, leader.', run: snapOn(braid) },
        { id: 'fluoro', caption: '12-lb fluorocarbon.', run: snapOn() },
        { id: 'mono', caption: '12-lb mono.', run: snapOn(mono) },
        { id: 'stiff-rod', caption: 'Stiff tip.', run: hopWith(20) },
        { id: 'soft-rod', caption: 'Soft tip.', run: hopWith(4) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'A soft rod on mono. Then braid.',
      challenges: ['soft-rod-hop', 'braid-drag']
    },
    {
      kind: 'feel',
      title: 'What you’d feel',
      text: 'Know what your gear hides.',
      cues: [
        {
          sign: 'Everything soft and late',
          means: 'Mono, a soft rod, or slack.',
          basis: { most: 'pull_N', of: ['stiff-rod', 'soft-rod'], unknowns: 'drag' }
        },
        { sign: 'Every pebble is loud', means: 'Braid carries feel best.', basis: 'practice' },
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
      text: 'Weigh your pull.',
      needs: ['The rod and line you fish, and its pound test', 'A spring scale'],
      steps: [
        'Pull the scale as you’d hop. Read it.',
        'Pull it as you’d drag. Read it.',
        'That pull is what stretches line.'
      ],
      log: ['Both readings', 'What you’d change, and why']
    }
  ]
};
