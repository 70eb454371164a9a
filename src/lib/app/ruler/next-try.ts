import { idsOf, type Drill } from '$lib/course';
import {
  drillProgressOf,
  SHORT_DRILL_TRIES,
  drillTriesOf,
  type Progress,
  type ScheduledTry
} from '$lib/practice';
import { PASS_MARK } from '$lib/scoring';
import type { StoredTry } from '$lib/wire';

/** Seeds of sittings are whole numbers below this. */
const SEEDS = 1_000_000;

/** Where a drill's learner stands, and the challenge that comes now. */
export interface NextTry {
  progress: Progress;
  /** Its id; empty when there is nothing left to do. */
  challenge: string;
}

/**
 * The next try of a drill. The sitting's seed is the number of tries before it, so that a sitting
 * goes on after a reload as it was, and no two are alike.
 */
export function nextTry(
  { id, asks }: Pick<Drill, 'id' | 'asks'>,
  all: readonly StoredTry[],
  now_ms: number,
  read: (made: StoredTry) => ScheduledTry | null
): NextTry {
  const tries = drillTriesOf(id, all).flatMap((made) => read(made) ?? []);
  const progress = drillProgressOf(tries, now_ms, asks);
  const seed = (tries.length - progress.made) % SEEDS;
  const ids = progress.left > 0 ? idsOf({ drill: id, phase: progress.phase, seed }) : [];
  return { progress, challenge: ids[progress.made] ?? '' };
}

/** The next of a few hidden tries between two lessons: how many were made, how many of them passed, and the challenge's id. */
export function nextShortTry(
  { id }: Pick<Drill, 'id'>,
  all: readonly StoredTry[]
): { made: number; good: number; challenge: string } {
  const tries = drillTriesOf(id, all);
  const made = tries.length;
  const good = tries
    .slice(0, SHORT_DRILL_TRIES)
    .filter(({ marks = 0 }) => marks >= PASS_MARK).length;
  const ids = idsOf({ drill: id, phase: 'unseen', seed: 0 });
  return { made, good, challenge: made < SHORT_DRILL_TRIES ? ids[made] : '' };
}
