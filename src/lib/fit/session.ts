import * as v from 'valibot';
import { baseMove, parseSetup, ScenarioError, type Move, type SetupInput } from '../model';

/** Most tests of one session: an afternoon at the pool is a dozen. */
const MOST_TESTS = 200;

const length = v.pipe(v.number(), v.finite());
const deviation = v.pipe(v.number(), v.finite(), v.minValue(1e-4, 'must be more than 0'));
const record = v.record(v.string(), v.unknown());

const test = v.strictObject({
  move: baseMove,
  /** What lay otherwise than the gear says, in this test alone. */
  start: v.optional(record),
  /** Towards the angler, from the start of the move to rest, m. */
  travel_m: v.optional(length),
  travel_sd_m: v.optional(deviation),
  /** Above the bottom below the bait, m. */
  peak_height_m: v.optional(length),
  height_sd_m: v.optional(deviation)
});

const known = v.strictObject({
  reach_m: v.optional(v.pipe(v.number(), v.minValue(0.1), v.maxValue(6))),
  elevation_deg: v.optional(v.pipe(v.number(), v.minValue(-90), v.maxValue(90))),
  slack_m: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(10))),
  drag_area_m2: v.optional(v.pipe(v.number(), v.minValue(1e-6), v.maxValue(0.1))),
  lift_to_drag: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(1)))
});

const schema = v.strictObject({
  gear: record,
  tests: v.pipe(v.array(test), v.minLength(1), v.maxLength(MOST_TESTS)),
  /** Unknowns that were measured or looked at: they are not fitted. */
  known: v.optional(known, {})
});

export type UnknownName = keyof v.InferOutput<typeof known>;

/** One move with what was measured of it. A test without a measurement is only predicted. */
export interface PoolTest {
  readonly move: Move;
  /** Gear, water and start of this test: the session's gear with the test's own start. */
  readonly setup: SetupInput;
  /** Whether the test says its own slack, so that the session's does not hold for it. */
  readonly hasOwnSlack: boolean;
  readonly travel_m?: number;
  readonly travel_sd_m?: number;
  readonly peak_height_m?: number;
  readonly height_sd_m?: number;
}

/** What was tried with one outfit: the nominal gear, the tests, and what of the unknowns is known. */
export interface Session {
  readonly gear: SetupInput;
  readonly tests: readonly PoolTest[];
  readonly known: Readonly<Partial<Record<UnknownName, number>>>;
}

/**
 * Checks a session. SI units, named in each key; the format is in docs/fit.md.
 * Throws ScenarioError with the path ("tests.3.travel_m", "gear.line.diameter_m") and value of the
 * first fault.
 */
export function parseSession(input: unknown): Session {
  const parsed = v.safeParse(schema, input, { abortEarly: true });
  if (!parsed.success) throw faultOf(parsed.issues[0]);
  const { gear, tests, known } = parsed.output;
  inside('gear', () => parseSetup(gear));
  return {
    gear: gear as SetupInput,
    known,
    tests: tests.map(({ start, ...rest }, i) => {
      const setup = { ...gear, start: { ...(gear.start as object), ...start } };
      inside(`tests.${i}`, () => parseSetup(setup));
      return { ...rest, setup: setup as SetupInput, hasOwnSlack: start?.slack_m !== undefined };
    })
  };
}

function faultOf(issue: v.BaseIssue<unknown>): ScenarioError {
  const path = v.getDotPath(issue) ?? '';
  const isUnknown = issue.type === 'strict_object' && issue.expected === 'never';
  if (isUnknown) return new ScenarioError(path, issue.path?.at(-1)?.value, 'unknown key');
  const reason = issue.input === undefined ? 'is missing' : issue.message;
  return new ScenarioError(path, issue.input, reason);
}

/** Names the place of a fault that the model finds in a part of the session. */
export function inside<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    throw new ScenarioError(`${path}.${error.path}`, error.value, error.reason);
  }
}
