import {
  parseScenario,
  parseSetup,
  recordScenario,
  ScenarioError,
  type RecordedRun,
  type RodInput
} from '$lib/model';
import { callOf } from '$lib/practice';
import type { Try } from '$lib/sandbox';
import { gradeRun, type Challenge } from '$lib/scoring';
import type { KeptGuess } from '$lib/wire';
import { fromHash } from './try-link';
import { tryRuns, type KnownInput, type RanTry, type TryRun } from './try-runs';

/** A try that a hand has just made: it was run meanwhile. */
export function gradeMade(challenge: Challenge, { input, run }: Try, said: KeptGuess = {}): TryRun {
  const made = { move: input, result: run.result, call: callOf(said, challenge) };
  const ran = { ...run, grade: gradeRun(challenge, made) };
  return tryRuns.learn(challenge, { input }, ran) as TryRun;
}

/** The try, run now if it was not before. Null where today's model cannot run it. */
export function gradedNow(challenge: Challenge, made: KnownInput): TryRun | null {
  const known = tryRuns.known(made);
  return known !== undefined ? known : tryRuns.learn(challenge, made, runNow(challenge, made));
}

/** A try at this challenge as a link holds it; null where the link holds none, or none that can be run. */
export function runSent(challenge: Challenge, link: string | null): TryRun | null {
  const sent = fromHash(link ?? '');
  return sent?.challenge === challenge.id ? gradedNow(challenge, sent) : null;
}

/** What a replay needs. One whose line was let go of is run once more. */
export function recordedRun(graded: TryRun): RecordedRun {
  const { challenge, input, result } = graded;
  const line = tryRuns.lineOf(graded) ?? recordTry(challenge, input).line;
  tryRuns.keepLine(graded, line);
  return { setup: parseSetup(challenge.setup), move: input, result, line };
}

function runNow(challenge: Challenge, { input, ...said }: KnownInput): RanTry | null {
  try {
    const { result, line } = recordTry(challenge, input);
    return {
      result,
      line,
      grade: gradeRun(challenge, { move: input, result, call: callOf(said, challenge) })
    };
  } catch (error) {
    if (error instanceof ScenarioError) return null;
    throw error;
  }
}

function recordTry({ setup, hold_s }: Challenge, input: RodInput): RecordedRun {
  return recordScenario(parseScenario({ ...setup, move: input, hold_s }));
}
