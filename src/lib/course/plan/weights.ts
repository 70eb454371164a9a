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
/** A count that is still held, s: beyond it a spell is spent counting (as for a guide's lesson, jobs/jig-for.ts). */
const MOST_COUNT_S = 15;

/** What a weight does where it matters most, halfway in: near the boat every weight lifts sooner. */
export function weightUse({ fall, limit }: WeightFigures): WeightUse {
  const { tip_m, count_s } = limit;
  if (fall[0] > MOST_COUNT_S) return 'long count';
  const [far, near] = [count_s[0], count_s[count_s.length - 1]];
  const isWithin = (count: number | null, pace: number) =>
    count !== null && count <= Math.ceil(tip_m / pace);
  if (isWithin(far, PLAIN_PACE_M_S) && isWithin(near, SLOW_PACE_M_S)) return 'holds';
  return isWithin(far, SLOW_PACE_M_S) ? 'slow only' : 'lifts';
}

/** Best first, of those that do as well the lightest: more weight than holds only snags more. */
const ORDER: readonly WeightUse[] = ['holds', 'slow only', 'long count', 'lifts'];

/** The weight to begin with: its place in the list. Throws RangeError for an empty box. */
export function firstWeight(box: readonly WeightFigures[]): number {
  if (box.length === 0) throw new RangeError('box must not be empty');
  const places = box.map((one, i) => ({ i, one, rank: ORDER.indexOf(weightUse(one)) }));
  places.sort((a, b) => a.rank - b.rank || a.one.mass_kg - b.one.mass_kg);
  // Where none stays down, the heaviest comes nearest to it.
  if (places[0].rank === ORDER.length - 1) return places[places.length - 1].i;
  return places[0].i;
}
