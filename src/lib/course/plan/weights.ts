import { guidesSeeItLift, usualOn_kg } from '../usual-weight';
import type { PlannedDay } from './day';

/** What the model says of a weight in the day's water. */
export interface WeightFigures {
  mass_kg: number;
  fall: readonly [s: number, half_s: number];
  /** Quickest counts for the drag of `tip_m` that stay down, the jig far out first; null for none. */
  limit: { tip_m: number; count_s: readonly (number | null)[] };
}

/** What a weight is good for today. */
export type WeightUse = 'holds' | 'slow only' | 'lifts' | 'long count';

/** Pace of a drag that nobody finds slow, m/s: the middle of the trade's 0.3 to 1 ft/s, rounded down. */
const PLAIN_PACE_M_S = 0.15;
/** And the slowest that a hand still makes even: the trade's least, 0.3 ft/s. */
const SLOW_PACE_M_S = 0.09;
/** A count that is still held, s: beyond it a spell is spent counting. A client's is shorter (jobs/jig-for.ts). */
export const LONGEST_COUNT_S = 15;

/** What a weight does where it matters most, halfway in: near the boat every weight lifts sooner. */
export function weightUse({ fall, limit }: WeightFigures): WeightUse {
  const { tip_m, count_s } = limit;
  if (fall[0] > LONGEST_COUNT_S) return 'long count';
  const [far, near] = [count_s[0], count_s[count_s.length - 1]];
  const isWithin = (count: number | null, pace: number) =>
    count !== null && count <= Math.ceil(tip_m / pace);
  if (isWithin(far, PLAIN_PACE_M_S) && isWithin(near, SLOW_PACE_M_S)) return 'holds';
  return isWithin(far, SLOW_PACE_M_S) ? 'slow only' : 'lifts';
}

const ORDER: readonly WeightUse[] = ['holds', 'slow only', 'long count', 'lifts'];

/** Mud lets any jig go with a jump at a quick drag: that asks for a slow one, not for a heavier jig. Common practice, no source. */
function rankOf(use: WeightUse, { ground }: Pick<PlannedDay, 'ground'>): number {
  return ORDER.indexOf(ground === 'mud' && use === 'slow only' ? 'holds' : use);
}

/**
 * The weight to begin with: its place in the list. Of those that hold, or do next best, the one nearest
 * to what guides tie on at this depth and in this wind. Throws RangeError for an empty box.
 */
export function firstWeight(
  box: readonly WeightFigures[],
  day: Pick<PlannedDay, 'depth_m' | 'wind' | 'ground'>
): number {
  if (box.length === 0) throw new RangeError('box must not be empty');
  const usual_kg = usualOn_kg(day);
  const places = box.map((one, i) => ({
    i,
    // Behind any that holds by guides' own account too, before one that the model itself lets go.
    rank: rankOf(weightUse(one), day) + (guidesSeeItLift(one.mass_kg, day.depth_m) ? 0.5 : 0),
    mass_kg: one.mass_kg,
    off: Math.abs(Math.log(one.mass_kg / usual_kg))
  }));
  // Where none stays down, the heaviest comes nearest to it.
  const better = (a: (typeof places)[number], b: (typeof places)[number]) =>
    a.rank - b.rank ||
    (weightUse(box[a.i]) === 'lifts' ? 0 : a.off - b.off) ||
    b.mass_kg - a.mass_kg;
  return places.sort(better)[0].i;
}

/** The lightest that the model keeps on bottom at a plain drag: its place; -1 for none. */
export function lightestThatHolds(box: readonly WeightFigures[]): number {
  const holding = box.flatMap((one, i) => (weightUse(one) === 'holds' ? [i] : []));
  return holding.reduce((a, b) => (a < 0 || box[b].mass_kg < box[a].mass_kg ? b : a), -1);
}
