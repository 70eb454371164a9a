import type { Random } from '../../model';

/**
 * `npm run check:items` checks each generator's questions of the seeds from 1 to this one: all that a clinic
 * or a homework asks, where nobody can put a bad question right. That takes about 8 s of one core a seed, so
 * `npm test` checks the first five. A homework has up to 20 questions about an
 * objective and repeats no seed among them, so fewer than 20 would make it repeat.
 */
export const LAST_CHECKED_SEED = 20;

export const CHECKED_SEEDS: readonly number[] = Array.from(
  { length: LAST_CHECKED_SEED },
  (_, i) => i + 1
);

/** One of the checked seeds that are not `used`; of all of them where each is. */
export function drawCheckedSeed(random: Random, used: ReadonlySet<number> = new Set()): number {
  const free = CHECKED_SEEDS.filter((seed) => !used.has(seed));
  const from = free.length > 0 ? free : CHECKED_SEEDS;
  return from[Math.floor(random() * from.length)];
}
