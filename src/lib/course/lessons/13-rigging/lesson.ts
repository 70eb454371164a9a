import { held, inTurn, pause, sweep } from '../../retrieves/moves';
import { castOut, deeperWith, deepPlace, drillCautions, JIGS } from '../fathomley';
import { lowRun, uprightRun } from '../runs';

/** How much water a jig pushes aside, m²: bare, and with a big trailer. From memory. */
const BARE_M2 = 4e-4;
const BIG_M2 = 13e-4;
const HALF = { mass_kg: JIGS.half };

const fall = (drag_area_m2: number) =>
  uprightRun(
    deeperWith({ ...HALF, drag_area_m2, depth_m: 6.1, start: castOut(14) }),
    45,
    inTurn(held(45), pause(1)),
    30
  );
const drag = (drag_area_m2: number) =>
  lowRun(
    deeperWith({ ...HALF, drag_area_m2, start: { bait_x_m: 16, slack_m: 0.03 } }),
    sweep(60, 87.5, 1.8)
  );
/** The reel engaged at the splash: the jig swings down on a tight line. */
const swingDown = (diameter_m: number) =>
  uprightRun(
    deeperWith({
      ...HALF,
      depth_m: 6.1,
      start: castOut(14, 'closed'),
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
      depth_m: 6.1,
      start: castOut(14),
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
  minutes: 9,
  about:
    'Trailer, line and rod change what the jig does. Head shape, weedguard and a sharp hook change what gets hung and what gets hooked. Know which is which.',
  place: deepPlace,
  objectives: [
    'Know what a trailer and a line change, and what only guides can tell you.',
    'Slow down for a big trailer.'
  ],
  leaves_out: ['Colors.', 'Knots: use one you trust, and test it.'],
  claims: [
    { says: ['It weighs about the same.'], basis: 'practice' },
    {
      says: 'In free spool it hardly matters.',
      basis: { alike: 'fall_s', of: ['thick-free', 'thin-free'], unknowns: 'drag' }
    },
    {
      says: 'A big trailer slows the fall and lifts sooner.',
      basis: { most: 'fall_s', of: ['big', 'bare'], unknowns: 'drag' }
    },
    {
      says: 'At one pace it’s off bottom more.',
      basis: { most: 'contact', of: ['drag-bare', 'drag-big'], unknowns: 'drag' }
    },
    {
      says: 'On a tight line, thick line swings down slower.',
      basis: { most: 'fall_s', of: ['thick', 'thin'], unknowns: 'drag' }
    },
    {
      says: 'Football heads roll over rock, pointed heads slip through brush. The model can’t tell them apart.',
      basis: 'practice'
    },
    {
      says: [
        'Trailer, line and rod change what the jig does.',
        'It weighs the same, but it pushes more water aside.',
        'More water to push aside.'
      ],
      basis: { most: 'fall_s', of: ['big', 'bare'], unknowns: 'drag' }
    },
    {
      says: ['Lead still pulls it down.', 'It takes 10 to 20 seconds, not a minute.'],
      basis: { run: 'question', holds: { fall_s: [10, 20] }, unknowns: 'drag' }
    },
    {
      says: 'A big trailer slows the fall and lifts sooner.',
      basis: { most: 'contact', of: ['drag-bare', 'drag-big'], unknowns: 'drag' }
    },
    {
      says: [
        'Head shape, weedguard and a sharp hook change what gets hung and what gets hooked.',
        'What the model knows, and what only guides tell you.'
      ],
      basis: 'practice'
    }
  ],
  proofs: [
    { id: 'thick-free', run: freeFall(0.00043) },
    { id: 'thin-free', run: freeFall(0.0003) },
    { id: 'thick', run: swingDown(0.00043) },
    { id: 'thin', run: swingDown(0.0003) }
  ],
  builds_on: ['weight-and-depth', 'line-and-rod'],
  cautions: [drillCautions.water],
  sections: [
    {
      kind: 'predict',
      title: 'Call it first',
      text: '{20 ft|6 m}, free spool, {1/2 oz|14 g}, 12-pound fluorocarbon. No trailer: you counted about 8 seconds. Now thread on a big one: a full craw with flapping claws.',
      question: {
        ask: 'How long is the fall now?',
        hint: 'It weighs about the same. What else is bigger?',
        say: 'seconds',
        run: fall(BIG_M2),
        options: [
          {
            id: 'same',
            says: 'About 8 seconds again',
            holds: { fall_s: [6, 9.9] },
            reply:
              'It weighs the same, but it pushes more water aside. A big trailer slows the fall and lifts sooner.'
          },
          {
            id: 'longer',
            says: '10 to 20 seconds',
            holds: { fall_s: [10, 20] },
            reply: 'Right. More water to push aside. A big trailer slows the fall and lifts sooner.'
          },
          {
            id: 'far-longer',
            says: 'A minute or so',
            holds: { fall_s: [40, 90] },
            reply: 'Lead still pulls it down. It takes 10 to 20 seconds, not a minute.'
          }
        ]
      }
    },
    {
      kind: 'see',
      title: 'See it',
      text: 'One jig, two trailers. At one pace it’s off bottom more.',
      demos: [
        { id: 'bare', caption: 'Bare: the fall.', run: fall(BARE_M2) },
        { id: 'big', caption: 'Big trailer: the fall.', run: fall(BIG_M2) },
        { id: 'drag-bare', caption: 'Bare: the drag.', run: drag(BARE_M2) },
        { id: 'drag-big', caption: 'Big trailer: the same drag.', run: drag(BIG_M2) }
      ]
    },
    {
      kind: 'try',
      title: 'Your turn',
      text: 'A big trailer, twice: drag it, then count it.',
      challenges: ['big-trailer-drag', 'big-trailer-count']
    },
    {
      kind: 'feel',
      title: 'What it changes',
      text: 'What the model knows, and what only guides tell you.',
      cues: [
        {
          sign: 'Heavier line',
          means:
            'On a tight line, thick line swings down slower. In free spool it hardly matters. It also breaks later: match it to cover and rod.',
          basis: { most: 'fall_s', of: ['thick', 'thin'], unknowns: 'drag' }
        },
        {
          sign: 'Head shape',
          means:
            'Football heads roll over rock, pointed heads slip through brush. The model can’t tell them apart.',
          basis: 'practice'
        },
        {
          sign: 'Skirt',
          means: 'A full one slows the fall, as a trailer does. Trim it, and count again.',
          basis: 'practice'
        },
        {
          sign: 'Weedguard',
          means:
            'Stiff sheds brush and blocks bites. Trim it or fan it until the point finds your thumbnail.',
          basis: 'practice'
        },
        {
          sign: 'The point slides on a nail',
          means: 'Dull. Sharpen it, or change the jig.',
          basis: 'practice'
        },
        {
          sign: 'Rod power',
          means:
            'Medium-heavy for {3/8 to 5/8 oz|11 to 18 g}, heavy above. 12- to 20-pound test, spinning or baitcaster.',
          basis: 'practice'
        }
      ]
    },
    {
      kind: 'field',
      title: 'With a real rod',
      text: 'One jig, with and without.',
      needs: ['A jig and two trailers', 'A watch', 'Water you know the depth of'],
      steps: [
        'Test the point lightly on your thumbnail, away from the fingertip.',
        'Time three drops bare, three with each trailer.',
        'Drag each one foot. Note which one you feel.'
      ],
      log: ['Nine counts', 'The trailer you’d fish here, and why']
    }
  ]
};
