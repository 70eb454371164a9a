import { formatShare } from '../../scoring';

/** What a spell of casts takes: counts and pauses as they are said. */
export interface CastPace {
  out_m: number;
  fall_s: number;
  /** Of one move: the way of the tip, and its time. */
  tip_m: number;
  takes_s: number;
  pause_s: number;
}

/** The jig is worked so much of its way out; then it hangs below the rod and is reeled in. */
const WORKED_PART = 0.6;
/** Casting, reeling in, looking at hook and line, s. Common practice, no source. */
const BETWEEN_S = 25;
/** Casts before one thing is changed (trade.md). */
export const CASTS_A_CHANGE = 10;
/** With clients two thirds of the time go to talk, knots, nets and moving the boat. Common practice, no source. */
const FISHED_PART = 1 / 3;

/** How many casts a rod makes in so many minutes: arithmetic, no model. */
export function castsIn(minutes: number, clients: number, pace: CastPace): number {
  const { out_m, fall_s, tip_m, takes_s, pause_s } = pace;
  const moves = Math.max(1, Math.round((WORKED_PART * out_m) / tip_m));
  const cast_s = fall_s + moves * (takes_s + pause_s) + BETWEEN_S;
  const fished_s = 60 * minutes * (clients > 0 ? FISHED_PART : 1);
  return Math.max(1, Math.floor(fished_s / cast_s));
}

/** What the model leaves open of its counts, in one sentence for all of them: the widest, in tenths. */
export function ownCount(falls: readonly (readonly [s: number, half_s: number])[]): string {
  const widest = Math.max(...falls.map(([s, half_s]) => half_s / s));
  return `May be off by ${formatShare(Math.ceil(10 * widest) / 10)}: time three drops, and that’s your count.`;
}
