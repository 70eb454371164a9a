import { findChallenge } from '$lib/course';
import { ScenarioError } from '$lib/model';
import { measuredOf, type ScheduledTry, type StoredTry } from '$lib/practice';
import { gradeTry } from '$lib/scoring';

/** Tries never change, so each is run once while the site is open. */
const known = new Map<string, ScheduledTry | null>();

/** How the schedule reads a stored try; undefined for one that has not been run again yet. */
export function knownReading({ id }: StoredTry): ScheduledTry | null | undefined {
  return known.get(id);
}

/** Runs a stored try again. What is no practice, or is refused by today's model, is known as null. */
export function scheduled(made: StoredTry): void {
  known.set(made.id, read(made));
}

function read(made: StoredTry): ScheduledTry | null {
  // No lesson: what was made in one is no practice.
  const challenge = made.phase && findChallenge(made.challenge, []);
  if (!challenge || !made.phase) return null;
  try {
    const measured = measuredOf(challenge, gradeTry(challenge, made.input));
    return measured && { ...measured, phase: made.phase, at_ms: Date.parse(made.at) };
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}
