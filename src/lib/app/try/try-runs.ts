import type { LineHistory, RecordedRun, Result, RodInput } from '$lib/model';
import type { Challenge, Grade } from '$lib/scoring';
import type { KeptGuess } from '$lib/wire';

/** A try with all that came of it. Marks, measures, advice and pictures are views of this. */
export interface TryRun {
  readonly challenge: Challenge;
  readonly input: RodInput;
  readonly result: Result;
  readonly grade: Grade;
}

/** A try as it is kept, with what was called of it: homework without a server gives it no id. */
export interface KnownInput extends KeptGuess {
  readonly id?: string;
  readonly input: RodInput;
}

/** What came of a try, as a compute worker tells it. */
export type RanTry = Pick<RecordedRun, 'result' | 'line'> & { grade: Grade };

/** Lines are kept of so many tries, some 300 kB each: the last replays of a phone, within its memory. */
const KEPT_LINES = 40;

/**
 * Every try that was run while the site is open, with its grade. A try never changes, and its input
 * says all of it: so it is run once, by the hand that makes it or by the first page that needs it. What
 * is known is asked for without the model, which few pages need before they can be read: run-try.ts runs.
 */
export class TryRuns {
  readonly #byId = new Map<string, TryRun | null>();
  /** For a try that has no id, or has none yet. */
  readonly #byInput = new WeakMap<RodInput, TryRun | null>();
  readonly #lines = new Map<TryRun, LineHistory>();

  /** What came of a try; null for one that today's model cannot run. */
  learn(challenge: Challenge, { id, input }: KnownInput, ran: RanTry | null): TryRun | null {
    const graded = ran && { challenge, input, result: ran.result, grade: ran.grade };
    this.#byInput.set(input, graded);
    if (id !== undefined) this.#byId.set(id, graded);
    if (graded && ran) this.keepLine(graded, ran.line);
    return graded;
  }

  /** What is known of it: null where today's model cannot run it, undefined before it was run. */
  known({ id, input }: KnownInput): TryRun | null | undefined {
    const ofInput = this.#byInput.get(input);
    if (id === undefined) return ofInput;
    if (ofInput !== undefined && !this.#byId.has(id)) this.#byId.set(id, ofInput);
    return this.#byId.get(id);
  }

  /** The line of the last replays; undefined where it was let go of. */
  lineOf(graded: TryRun): LineHistory | undefined {
    return this.#lines.get(graded);
  }

  keepLine(graded: TryRun, line: LineHistory): void {
    this.#lines.delete(graded);
    this.#lines.set(graded, line);
    for (const [oldest] of this.#lines) {
      if (this.#lines.size <= KEPT_LINES) break;
      this.#lines.delete(oldest);
    }
  }
}

/** One for all pages. */
export const tryRuns = new TryRuns();
