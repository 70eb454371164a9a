import { PASS_MARK, TOTAL_MARKS } from './pass-mark';

/** The largest number below 1. */
const LESS_THAN_1 = 1 - Number.EPSILON / 2;
/** What a goal earns by nearness alone; the rest is for having met it. */
export const BY_NEARNESS = PASS_MARK / TOTAL_MARKS;
/** Of a goal's reach: farther outside than this, and what is for having met it is gone. A design value. */
export const HAIR = 0.1;

/**
 * 0–1, what a miss leaves, the one rule for every goal; 1 where there is none, and less at once where
 * there is. A tenth of the reach outside it has lost what passing leaves, and falls on from there to 0.
 * @param off how far off on the whole, 0 to 1: at 1 nothing was done of what was asked
 * @param worst how far outside its worst part is, in reaches, where that is another
 * @param byNearness what nearness alone earns
 */
export function earned(off: number, worst = off, byNearness = BY_NEARNESS): number {
  if (off <= 0 && worst <= 0) return 1;
  const isMet = 1 - clamped(worst / HAIR);
  return Math.min(LESS_THAN_1, (1 - byNearness) * isMet + byNearness * (1 - clamped(off)));
}

/** What is earned so far outside a limit, nothing by nearness from `reach` on. */
export function fading(miss: number, reach: number, byNearness = BY_NEARNESS): number {
  const off = Math.max(0, miss / reach);
  return earned(off, off, byNearness);
}

/** Of several alike: their mean says how far off, the worst of them whether it was met. Each 0 to 1. */
export function earnedByAll(misses: readonly number[], count = misses.length): number {
  const off = misses.reduce((all, one) => all + one, 0) / count;
  return earned(off, Math.max(...misses));
}

export function clamped(share: number): number {
  return Math.min(1, Math.max(0, share));
}
