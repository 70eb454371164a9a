import { taskIdOf } from '$lib/course';
import { isAtStake } from '$lib/practice';
import type { Challenge } from '$lib/scoring';
import { tryRuns, type TryRun } from './try-runs';
import { keptMarks, type KeptMarks, type StoredTry } from '$lib/wire';

/** A stored try with the marks that it counts with. */
export interface MarkedTry {
  readonly stored: StoredTry;
  readonly kept: KeptMarks;
}

/** The same with all that came of it under today's model. */
export interface GradedTry extends MarkedTry {
  readonly graded: TryRun;
}

/** Null for a try without marks, as far as is known. */
export function markedTry(stored: StoredTry): MarkedTry | null {
  const kept = keptMarks(stored, tryRuns.known(stored)?.grade ?? null);
  return kept && { stored, kept };
}

/** Null for a try that today's model cannot run or has not run yet. */
export function gradedTry(stored: StoredTry): GradedTry | null {
  const graded = tryRuns.known(stored);
  const marked = markedTry(stored);
  return graded && marked ? { ...marked, graded } : null;
}

/** Best marks by the id of the challenge, of those that were tried: 0 where none of the tries may pass it. */
export function bestOf(
  tries: readonly MarkedTry[],
  challenges: readonly Challenge[]
): Map<string, number> {
  const best = new Map<string, number>();
  for (const { stored, kept } of tries) {
    const task = taskIdOf(stored.challenge);
    const challenge = challenges.find(({ id }) => id === task);
    const counted = challenge && isAtStake(challenge, stored) ? kept.marks : 0;
    best.set(task, Math.max(counted, best.get(task) ?? 0));
  }
  return best;
}

/** What is said of marks from another version of the model; empty where they are today's. */
export function keptWords({ kept, graded }: Pick<GradedTry, 'kept' | 'graded'>): string {
  const today = graded.grade.marks;
  if (kept.model)
    return `Model ${kept.model} gave this ${kept.marks}. Today’s model gives ${today}.`;
  return kept.isRegraded ? 'Marks by today’s model. The ones you saw weren’t kept.' : '';
}
