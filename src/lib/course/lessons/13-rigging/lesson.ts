import { BARE_JIG_M2, BIG_TRAILER_M2, ft } from '../../items/draw';
import { held, inTurn, pause, sweep } from '../../retrieves/moves';
import { castOut, deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

const HALF = { mass_kg: JIGS.half };

const fall = (drag_area_m2: number) =>
  uprightRun(
    deeperWith({ ...HALF, drag_area_m2, depth_m: ft(20), start: castOut(ft(45)) }),
    45,
    inTurn(held(45), pause(1)),
    30
  );
const drag = (drag_area_m2: number) =>
  lowRun(
    deeperWith({ ...HALF, drag_area_m2, start: { bait_x_m: ft(50), slack_m: 0.03 } }),
    sweep(60, 87.5, 1.8)
  );
/** The reel engaged at the splash: the jig swings down on a tight line. */
const swingDown = (diameter_m: number) =>
  uprightRun(
    deeperWith({
      ...HALF,
      depth_m: ft(20),
      start: castOut(ft(45), 'closed'),
      line: { material: 'nylon', diameter_m }
    }),
    45,
    inTurn(held(45), pause(1)),
    40
  );

const freeFall = (diameter_m: number) =>
  uprightRun(
    deeperWith({
      ...HALF,
      depth_m: ft(20),
      start: castOut(ft(45)),
      line: { material: 'nylon', diameter_m }
    }),
    45,
    inTurn(held(45), pause(1)),
    30
  );

export default {
  id: 'rigging',
  order: 13,
  title: 'Rigging',
  minutes: 6,
  about:
    'The trailer is the soft plastic behind the jig. Trailer, line and rod change what the jig does. Head, weedguard and hook point change what gets hooked.',
  place: deepPlace,
  objectives: ['Know what a trailer and a line change.', 'Slow down for a big trailer.'],
  leaves_out: ['Colors and knots.'],
  claims: [
    {
      says: 'the model doesn’t.',
      basis: { alike: 'fall_s', of: ['thick-free', 'thin-free'], unknowns: 'drag' }
    },
    {
      says: ['same drag, more time off bottom.', 'it stays down longer.'],
      basis: { most: 'contact', of: ['drag-bare', 'drag-big'], unknowns: 'drag' }
    },
    {
      says: ['it’s down first.', 'it’s down later.'],
      basis: { most: 'fall_s', of: ['big', 'bare'], unknowns: 'drag' }
    },
    {
      says: 'On a tight line, thick line swings down slower.',
      basis: { most: 'fall_s', of: ['thick', 'thin'], unknowns: 'drag' }
    },
    {
      says: 'Football heads for rock, pointed ones for brush. The model can’t tell them apart.',
      basis: 'practice'
    },
    {
      says: [
        'Trailer, line and rod change what the jig does.',
        'It adds hardly any weight in water, but a lot to push.',
        'More water to push aside'
      ],
      basis: { most: 'fall_s', of: ['big', 'bare'], unknowns: 'drag' }
    },
    {
      says: 'A craw slows a jig; it doesn’t float it.',
      basis: { run: 'question', holds: { fall_s: [10, 20] }, unknowns: 'drag' }
    },
    {
      says: [
        'The trailer is the soft plastic behind the jig.',
        'Head, weedguard and hook point change what gets hooked.',
        'In free spool guides count it slower, too;'
      ],
      basis: 'practice'
    }
  ],
  proofs: [
    { id: 'thick-free', run: freeFall(0.00043) },
    { id: 'thin-free', run: freeFall(0.00032) },
    { id: 'thick', run: swingDown(0.00043) },
    { id: 'thin', run: swingDown(0.00032) }
  ],
  builds_on: ['weight-and-depth', 'line-and-rod'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: '{20 ft|6 m}, free spool, {1/2 oz|14 g}. No trailer: you counted about 8 seconds. Now thread on a full craw, soft plastic with claws.',
      question: {
        ask: 'How long is the fall now?',
        hint: 'Weight or size: which one did you add?',
        say: 'seconds',
        run: fall(BIG_TRAILER_M2),
        options: [
          {
            id: 'same',
            says: 'About 8 seconds again',
            holds: { fall_s: [6, 9.9] },
            reply: 'It adds hardly any weight in water, but a lot to push.'
          },
          {
            id: 'longer',
            says: '10 to 20 seconds',
            holds: { fall_s: [10, 20] },
            reply: 'Right. More water to push aside.'
          },
          {
            id: 'far-longer',
            says: 'A minute or so',
            holds: { fall_s: [40, 90] },
            reply: 'A craw slows a jig; it doesn’t float it.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      demos: [
        { id: 'bare', caption: 'Bare: it’s down first.', run: fall(BARE_JIG_M2) },
        { id: 'big', caption: 'Big trailer: it’s down later.', run: fall(BIG_TRAILER_M2) },
        { id: 'drag-bare', caption: 'Bare: it stays down longer.', run: drag(BARE_JIG_M2) },
        {
          id: 'drag-big',
          caption: 'Big trailer: same drag, more time off bottom.',
          run: drag(BIG_TRAILER_M2)
        }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      challenges: ['big-trailer-drag']
    },
    {
      kind: 'feel',
      title: 'What it changes',
      cues: [
        {
          sign: 'Heavier line',
          means:
            'On a tight line, thick line swings down slower. In free spool guides count it slower, too; the model doesn’t.',
          basis: { most: 'fall_s', of: ['thick', 'thin'], unknowns: 'drag' }
        },
        {
          sign: 'Head shape',
          means:
            'Football heads for rock, pointed ones for brush. The model can’t tell them apart.',
          basis: 'practice'
        },
        {
          sign: 'Skirt',
          means: 'A full one slows the fall. Trim it and recount.',
          basis: 'practice'
        },
        {
          sign: 'Weedguard',
          means:
            'Stiff sheds brush and costs hookups. Trim or fan it until it gives under one finger. Press from the side, never over the point.',
          basis: 'practice'
        },
        {
          sign: 'The point slides on a thumbnail',
          means: 'Dull. Sharpen it, or change the jig.',
          basis: 'practice'
        },
        {
          sign: 'Rod power',
          means:
            'Medium-heavy to {5/8 oz|18 g}, heavy above. Baitcaster 12- to 20-lb; spinning, braid and leader.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      needs: ['A jig and two trailers', 'A watch', 'Water you know the depth of'],
      steps: [
        'Drag the point lightly across your thumbnail.',
        'Time three drops bare, three with each trailer.',
        'Drag each one foot.'
      ],
      log: ['Nine counts', 'The one you’d fish here, and why']
    }
  ]
};
