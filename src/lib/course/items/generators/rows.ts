import {
  depth,
  drawGear,
  ft,
  inch,
  lengthToken,
  oz,
  pick,
  placeWords,
  several,
  shuffled,
  timeToken,
  weightToken
} from '../draw';
import type { Generator } from '../generator';
import { shownDrag, shownLift } from '../moves';
import { orderBy } from '../rank-item';

const weightsByHeight: Generator = {
  id: 'order-weights-hop',
  kind: 'order',
  objective: 'weight-depth',
  make: (random) => {
    const cast_m = ft(pick(random, [22, 26, 30]));
    const setup = drawGear(random, { slack_m: inch(1), cast_m });
    const pace_s = pick(random, [0.9, 1.1]);
    const weights = several(random, [1 / 4, 3 / 8, 1 / 2, 3 / 4, 1], 3);
    return orderBy({
      ask: `In ${depth(setup.water.depth_m)} of water three jigs with the same skirt lie ${depth(cast_m)} out. You lift from 10 to 11 o’clock in ${timeToken(pace_s)}. Which goes highest? Highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      contenders: shuffled(random, weights).map((ounces) => ({
        id: `w${ounces * 8}`,
        says: weightToken(oz(ounces)),
        run: shownLift({ ...setup, bait: { ...setup.bait, mass_kg: oz(ounces) } }, 10, 11, pace_s)
      })),
      right: 'Yes: at the same pace the lighter one goes higher.',
      reversed: 'That is the other way round: weight is what keeps it down.',
      other: 'The lift is the same for all three, so only the weight decides.',
      explain: 'A light jig takes a slower hand: the pace that hops it leaves a heavy one lower.'
    });
  }
};

interface Stretch {
  id: string;
  says: string;
  material: 'braid' | 'fluorocarbon' | 'nylon';
  diameter_m: number;
}

/** What a line gives under a snap goes with its stuff and its thickness: a row by each. */
const STRETCHES: readonly (readonly Stretch[])[] = [
  [
    { id: 'braid', says: 'braid', material: 'braid', diameter_m: 0.0002 },
    { id: 'fluorocarbon', says: 'fluorocarbon', material: 'fluorocarbon', diameter_m: 0.00028 },
    { id: 'nylon', says: 'nylon', material: 'nylon', diameter_m: 0.0002 }
  ],
  [
    { id: 'thick', says: 'nylon', material: 'nylon', diameter_m: 0.00045 },
    { id: 'middling', says: 'nylon', material: 'nylon', diameter_m: 0.00028 },
    { id: 'thin', says: 'nylon', material: 'nylon', diameter_m: 0.0002 }
  ]
];

const linesByHeight: Generator = {
  id: 'order-lines-hop',
  kind: 'order',
  objective: 'line-rod',
  make: (random) => {
    const cast_m = ft(pick(random, [60, 70]));
    const setup = drawGear(random, { slack_m: inch(0.5), cast_m });
    const pace_s = pick(random, [0.4, 0.5]);
    return orderBy({
      ask: `${placeWords(setup)} A snap from 10 to 12 o’clock in ${timeToken(pace_s)}, on three lines. On which does it go highest? Highest first.`,
      rule: 'highest first',
      measure: 'peak_height_m',
      unknowns: 'drag',
      contenders: shuffled(random, pick(random, STRETCHES)).map(
        ({ id, says, material, diameter_m }) => ({
          id,
          says: `${says}, {diameter:${diameter_m}}`,
          run: shownLift({ ...setup, line: { material, diameter_m } }, 10, 12, pace_s)
        })
      ),
      right: 'Yes: what the line gives, the hop loses.',
      reversed: 'That is the other way round: a line that stretches takes up the start of a snap.',
      other: 'Ask which stretches least under a sudden pull: that one passes most of it on.',
      explain:
        'Far out there is much line to stretch, and a snap is over before it has paid it back.'
    });
  }
};

const movesByTravel: Generator = {
  id: 'order-moves-travel',
  kind: 'order',
  objective: 'clock',
  make: (random) => {
    const setup = drawGear(random, { slack_m: inch(1), cast_m: ft(pick(random, [30, 38])) });
    const pace_s = pick(random, [1.5, 2]);
    const all = [
      {
        id: 'sweep',
        says: `a low sweep of ${lengthToken(ft(1))}`,
        run: shownDrag(setup, ft(1), 3)
      },
      { id: 'low-hour', says: 'a lift from 9 to 10 o’clock', run: shownLift(setup, 9, 10, pace_s) },
      {
        id: 'high-hour',
        says: 'a lift from 10 to 11 o’clock',
        run: shownLift(setup, 10, 11, pace_s)
      },
      {
        id: 'two-hours',
        says: 'a lift from 9 to 11 o’clock',
        run: shownLift(setup, 9, 11, 2 * pace_s)
      },
      {
        id: 'three-hours',
        says: 'a lift from 9 to 12 o’clock',
        run: shownLift(setup, 9, 12, 3 * pace_s)
      }
    ];
    return orderBy({
      ask: `${placeWords(setup)} You take ${timeToken(pace_s)} for each hour of lift, and ${timeToken(3)} for the sweep. Which move brings the jig furthest? Furthest first.`,
      rule: 'furthest first',
      measure: 'travel_m',
      contenders: shuffled(random, several(random, all, 3)),
      right: 'Yes: the further the tip gets from the bait, the further the bait goes.',
      reversed: 'That is the other way round. Compare how far the tip gets from the bait.',
      other: 'An hour moves the tip by half of the rod’s reach, and high up more of it counts.',
      explain: 'An hour is feet, not inches; a foot of bait is a small move.'
    });
  }
};

export const rows = [weightsByHeight, linesByHeight, movesByTravel];
