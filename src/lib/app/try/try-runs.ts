import {
  parseScenario,
  parseSetup,
  recordScenario,
  ScenarioError,
  type LineHistory,
  type RecordedRun,
  type Result,
  type RodInput
} from '$lib/model';
import type { Try } from '$lib/sandbox';
import { gradeRun, type Challenge, type Grade } from '$lib/scoring';

/** A try with all that came of it. Marks, measures, advice and pictures are views of this. */
export interface TryRun {
  readonly challenge: Challenge;
  readonly input: RodInput;
  readonly result: Result;
  readonly grade: Grade;
}

/** A try as it is kept: homework without a server gives it no id. */
export interface KnownInput {
  readonly id?: string;
  readonly input: RodInput;
}

/** What came of a try, as a compute worker tells it. */
type RanTry = Pick<RecordedRun, 'result' | 'line'> & { grade: Grade };

/** Lines are kept of so many tries, some 300 kB each: the last replays of a phone, within its memory. */
const KEPT_LINES = 40;

/**
 * Every try that was run while the site is open, with its grade. A try never changes, and its input
 * says all of it: so it is run once, by the hand that makes it or by the first page that needs it.
 */
export class TryRuns {
  readonly #byId = new Map<string, TryRun | null>();
  /** For a try that has no id, or has none yet. */
  readonly #byInput = new WeakMap<RodInput, TryRun | null>();
  readonly #lines = new Map<TryRun, LineHistory>();

  /** A try that a hand has just made: it was run meanwhile. */
  made(challenge: Challenge, { input, run }: Try): TryRun {
    const { result } = run;
    const graded = {
      challenge,
      input,
      result,
      grade: gradeRun(challenge, { move: input, result })
    };
    this.#byInput.set(input, graded);
    this.#keepLine(graded, run.line);
    return graded;
  }

  /** A try that was run elsewhere; null for one that could not be. */
  learn(challenge: Challenge, { id, input }: KnownInput, ran: RanTry | null): void {
    const graded = ran && { challenge, input, result: ran.result, grade: ran.grade };
    this.#byInput.set(input, graded);
    if (id !== undefined) this.#byId.set(id, graded);
    if (graded && ran) this.#keepLine(graded, ran.line);
  }

  /** What is known of it: null where today's model cannot run it, undefined before it was run. */
  known({ id, input }: KnownInput): TryRun | null | undefined {
    const ofInput = this.#byInput.get(input);
    if (id === undefined) return ofInput;
    if (ofInput !== undefined && !this.#byId.has(id)) this.#byId.set(id, ofInput);
    return this.#byId.get(id);
  }

  /** The try, run now if it was not before. Null where today's model cannot run it. */
  of(challenge: Challenge, made: KnownInput): TryRun | null {
    const known = this.known(made);
    if (known !== undefined) return known;
    const graded = this.#run(challenge, made.input);
    this.#byInput.set(made.input, graded);
    if (made.id) this.#byId.set(made.id, graded);
    return graded;
  }

  /** What a replay needs. One whose line was let go of is run once more. */
  recorded(graded: TryRun): RecordedRun {
    const { challenge, input, result } = graded;
    const line = this.#lines.get(graded) ?? recordTry(challenge, input).line;
    this.#keepLine(graded, line);
    return { setup: parseSetup(challenge.setup), move: input, result, line };
  }

  #run(challenge: Challenge, input: RodInput): TryRun | null {
    try {
      const { result, line } = recordTry(challenge, input);
      const graded = {
        challenge,
        input,
        result,
        grade: gradeRun(challenge, { move: input, result })
      };
      this.#keepLine(graded, line);
      return graded;
    } catch (error) {
      if (error instanceof ScenarioError) return null;
      throw error;
    }
  }

  #keepLine(graded: TryRun, line: LineHistory): void {
    this.#lines.delete(graded);
    this.#lines.set(graded, line);
    for (const [oldest] of this.#lines) {
      if (this.#lines.size <= KEPT_LINES) break;
      this.#lines.delete(oldest);
    }
  }
}

function recordTry({ setup, hold_s }: Challenge, input: RodInput): RecordedRun {
  return recordScenario(parseScenario({ ...setup, move: input, hold_s }));
}

/** One for all pages. */
export const tryRuns = new TryRuns();
