import type { Random } from '../model';

/** A point of a sample with the logarithm of its density. */
export interface Walker {
  readonly at: readonly number[];
  readonly log: number;
}

/** Longest stretch; 2 is what Goodman & Weare take. */
const STRETCH = 2;

/**
 * Affine-invariant sampling (Goodman & Weare 2010, Comm. App. Math. Comp. Sci. 5, eqs. 7 and 9): each walker
 * in turn is moved along the line to another, so that a long narrow density needs no tuning. Changes
 * `walkers` in place; there must be more than twice as many as unknowns.
 */
export function stretchWalkers(
  walkers: Walker[],
  logDensity: (at: readonly number[]) => number,
  steps: number,
  random: Random
): void {
  const power = walkers[0].at.length - 1;
  for (let step = 0; step < steps; step++) {
    for (let w = 0; w < walkers.length; w++) {
      const { at, log } = walkers[w];
      const other = (w + 1 + Math.floor(random() * (walkers.length - 1))) % walkers.length;
      const from = walkers[other].at;
      const z = ((STRETCH - 1) * random() + 1) ** 2 / STRETCH;
      const next = at.map((one, j) => from[j] + z * (one - from[j]));
      const nextLog = logDensity(next);
      if (Math.log(1 - random()) < power * Math.log(z) + nextLog - log) {
        walkers[w] = { at: next, log: nextLog };
      }
    }
  }
}
