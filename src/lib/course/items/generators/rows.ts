import { dealt, drawGear, ft, inch, oz, pick, placeWords, shuffled, isCloseIn } from '../draw';
import type { Generator } from '../generator';
import { MEASURES } from '../measures';
import { shownDrag, shownLift } from '../moves';
import { orderBy } from '../rank-item';
import { saidFeet, saidHour, saidOut, saidSeconds, saidWeight } from '../said';
import {
  guides_ft,
  isHeightSeenAlike,
  quickSaid,
  travelsSeen_m,
  type Seen
} from './seen-by-guides';

/** Four that are fished in such a depth. */
const weightsFor = (depth_m: number) =>
  depth_m > ft(15) ? [3 / 8, 1 / 2, 3 / 4, 1] : [1 / 4, 3 / 8, 1 / 2, 3 / 4];

/** From ten to twelve. */
const HOURS_UP = 2;

const weightsByHeight: Generator = {
  id: 'order-weights-hop',
  kind: 'order',
  objective: 'hops',
  make: (random) => {
    const cast_m = ft(pick(random, [25, 30, 35]));
    const setup = drawGear(random, { slack_m: inch(1), cast_m });
    if (isCloseIn(setup)) return null;
    const pairs = weightsFor(setup.water.depth_m).flatMap((ounces) =>
      [0.5, 1, 2, 4].map((s) => ({ ounces, s }))
    );
    const contenders = shuffled(random, pairs)
      .slice(0, 3)
      .map(({ ounces, s }) => ({
        id: `w${ounces * 8}-s${s * 10}`,
        says: `${saidWeight(oz(ounces))} in ${saidSeconds(s)}`,
        printed: [ounces, s],
        hour_s: s / HOURS_UP,
        run: shownLift({ ...setup, bait: { ...setup.bait, mass_kg: oz(ounces) } }, 10, 12, s)
      }));
    if (!isHeightSeenAlike(contenders)) return null;
    return orderBy({
      ask: `${saidOut(setup.water.depth_m)} of water. Three lifts, the same skirt on each jig, ${saidOut(cast_m)} out, {7 ft|2.1 m} rod. You lift each from 10 to 12 o’clock. Which goes highest? Highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      contenders,
      right: 'Right. A quick hand lifts any of them. At one pace the lighter goes higher.',
      reversed: 'That’s lowest first: weight keeps it down, a quick hand gets it up.',
      other: 'Weigh both: a light jig lifts at a slow pace, a heavy one needs a quick hand.',
      explain: `What sinks slowly lifts easily, but a quick hand lifts anything.${quickSaid(contenders)}`
    });
  }
};

/** Two that stretch and one that hardly does, each as it is sold; makers differ by a tenth. */
const STRETCHES = [
  { id: 'braid', says: '{20-lb|0.23 mm} braid', material: 'braid', diameter_m: 0.00023 },
  { id: 'mono', says: '{12-lb|0.32 mm} mono', material: 'nylon', diameter_m: 0.00032 },
  { id: 'thick', says: '{20-lb|0.43 mm} mono', material: 'nylon', diameter_m: 0.00043 }
] as const;

/** Nearer than this many times its depth nobody strokes a jig that was cast. Common practice, no source. */
const NEARLY_UNDER = 1.2;
/**
 * Two are as far out as each other, on lines that differ most, so that how far out alone is no answer; and they
 * are as often the near ones as the far ones, of a few seeds, too; ft. Close in, lines differ by less than
 * anyone sees.
 */
const TWO_FAR = { two: [70, 75, 80, 85, 90, 95, 100], one: [25, 30, 35, 40, 45, 50] };
const TWO_NEAR = { two: [50, 55, 60, 65, 70, 75], one: [80, 85, 90, 95, 100, 105, 110] };
const PAIRS = [TWO_NEAR, TWO_FAR, TWO_FAR, TWO_NEAR];
/** Long strokes and longer ones, by the clock. */
const STROKES = [
  [10, 12],
  [9, 12],
  [9, 11.5]
] as const;

const linesByHeight: Generator = {
  id: 'order-lines-hop',
  kind: 'order',
  objective: 'line-rod',
  make: (random, share) => {
    // Heavy and far out: there lines differ by more than anyone would miss.
    const setup = drawGear(random, { slack_m: inch(0.5), mass_kg: oz(1) });
    const pace_s = pick(random, [0.5, 1]);
    const [from, to] = pick(random, STROKES);
    const { two, one } = dealt(share, PAIRS);
    const [twice, once] = [pick(random, two), pick(random, one)];
    if (ft(Math.min(twice, once)) < NEARLY_UNDER * setup.water.depth_m) return null;
    const [braid, mono] = STRETCHES;
    const drawn = [
      { line: braid, feet: twice },
      { line: mono, feet: twice },
      { line: pick<(typeof STRETCHES)[number]>(random, STRETCHES), feet: once }
    ];
    return orderBy({
      ask: `${saidOut(setup.water.depth_m)} of water, a ${saidWeight(setup.bait.mass_kg)} jig, {7 ft|2.1 m} rod. You stroke it from ${from} to ${saidHour(to)} o’clock in ${saidSeconds(pace_s)}. Which setup lifts it highest? Rank them, highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      unknowns: 'drag',
      contenders: shuffled(random, drawn).map(
        ({ line: { id, says, material, diameter_m }, feet }) => ({
          id: `${id}-f${feet}`,
          says: `${saidOut(ft(feet))} out on ${says}`,
          printed: [feet],
          run: shownLift(
            {
              ...setup,
              line: { material, diameter_m },
              start: { ...setup.start, bait_x_m: ft(feet) }
            },
            from,
            to,
            pace_s
          )
        })
      ),
      right: 'Right. Steep line first. At one distance, the line that stretches less.',
      reversed: 'That’s lowest first: long, thin mono soaks up a stroke.',
      other: 'Two things count: how much the line gives, and how steep it is.',
      explain:
        'Mono stretches, thin mono most; braid hardly does; more line stretches more. Far out, the line also pulls flatter.'
    });
  }
};

/** Whether guides would put these in the model's order, and surely. */
function isSeenAlike(moves: readonly Seen[]): boolean {
  const rows = moves.map(travelsSeen_m).sort((a, b) => b[0] - a[0]);
  const { apart } = MEASURES.travel_m;
  return rows.slice(1).every((less, i) => less.every((m, way) => rows[i][way] - m > apart));
}

/** A lift by the rod's clock, or how far a low sweep takes the tip, ft. */
type Move = readonly [from: number, to: number] | number;
const isSweep = (move: Move) => typeof move === 'number';

/**
 * Rows that model and guides put in this order, at some distance at least, by their shape: each shape is asked
 * for as often. One sweep at most: of several the printed feet would give the order away.
 */
const SHAPES: readonly (readonly (readonly [Move, Move, Move])[])[] = [
  [
    [[9, 12], 4, [9, 10]],
    [[9, 12], 3, [9, 10]],
    [[9, 12], 4, [10, 11]],
    [[9, 12], 4, [11, 12]]
  ],
  [
    [
      [9, 11],
      [10, 11],
      [9, 10]
    ],
    [
      [10, 12],
      [10, 11],
      [9, 10]
    ],
    [
      [10, 12],
      [11, 12],
      [9, 10]
    ],
    [
      [9, 12],
      [10, 11],
      [9, 10]
    ],
    [
      [9, 12],
      [11, 12],
      [9, 10]
    ]
  ],
  [
    [4, [10, 11], [9, 10]],
    [4, [11, 12], [9, 10]]
  ],
  [
    [
      [10, 12],
      [9, 11],
      [9, 10]
    ],
    [
      [10, 12],
      [9, 11],
      [10, 11]
    ],
    [
      [9, 12],
      [10, 12],
      [9, 11]
    ],
    [[10, 12], [9, 11], 1],
    [[10, 12], [9, 11], 2]
  ]
];

const movesByTravel: Generator = {
  id: 'order-moves-travel',
  kind: 'order',
  objective: 'clock',
  make: (random, share) => {
    const cast_m = ft(pick(random, [30, 35, 40, 45]));
    const setup = drawGear(random, { slack_m: inch(1), cast_m });
    if (isCloseIn(setup)) return null;
    const pace_s = pick(random, [1.5, 2]);
    const row = pick(random, dealt(share, SHAPES));
    const hasSweep = row.some(isSweep);
    const lifted = ([from, to]: readonly [number, number]) => ({
      id: `h${from}-${to}`,
      says: `a lift from ${from} to ${to} o’clock`,
      isLift: true,
      guides_ft: guides_ft(from, to),
      printed: hasSweep ? [to - from] : [to - from, from],
      run: shownLift(setup, from, to, (to - from) * pace_s)
    });
    const swept = (feet: number) => ({
      id: `sweep-${feet}`,
      says: `a low sweep, ${saidFeet(feet)} of tip`,
      isLift: false,
      guides_ft: feet,
      printed: [0],
      run: shownDrag(setup, ft(feet), 3 * feet)
    });
    const drawn = row.map((move) => (typeof move === 'number' ? swept(move) : lifted(move)));
    if (!isSeenAlike(drawn)) return null;
    return orderBy({
      ask: `${placeWords(setup)} {7 ft|2.1 m} rod. You take ${saidSeconds(pace_s)} for each hour of lift${hasSweep ? ', and sweep slowly' : ''}. Which brings the jig farthest? Farthest first.`,
      rule: 'farthest first',
      measure: 'travel_m',
      contenders: shuffled(random, drawn),
      right: 'Right. The farther the tip gets from the jig, the farther the jig comes.',
      reversed: 'That’s least first. Compare how far the tip gets from the jig.',
      other: `${hasSweep ? 'A foot of sweep is about a foot of jig. ' : ''}An hour of lift is {2 to 3½ ft|60 cm to 1 m}, by where the line points.`,
      explain:
        'Only swing along the line moves the jig: up high on a flat line, earlier on a steep one. Guides see less than the model: about half for nine to ten, about two thirds for nine to twelve.'
    });
  }
};

export const rows = [weightsByHeight, linesByHeight, movesByTravel];
