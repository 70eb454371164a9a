import { drills, findChallenge, idsOf, type Drill } from '$lib/course';
import { progressOf, travelOf, triesOf, type Progress, type StoredTry } from '$lib/practice';
import { scheduled } from '../scheduled';

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
export function nextTry(drill: string, all: readonly StoredTry[], now_ms: number): NextTry {
  const tries = triesOf(drill, all).flatMap((made) => scheduled(made) ?? []);
  const progress = progressOf(tries, now_ms);
  const seed = (tries.length - progress.made) % SEEDS;
  const ids = progress.left > 0 ? idsOf({ drill, phase: progress.phase, seed }) : [];
  return { progress, challenge: ids[progress.made] ?? '' };
}

/** The drills that ask for distances: no other error can be judged by CE and VE. */
export const distanceDrills: readonly Drill[] = drills.filter(({ id }) => {
  const [first] = idsOf({ drill: id, phase: 'seen', seed: 0 });
  const challenge = findChallenge(first, []);
  return challenge !== undefined && travelOf(challenge) !== undefined;
});
