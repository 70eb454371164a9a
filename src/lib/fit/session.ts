import * as v from 'valibot';
import { parseSetup, ScenarioError, type Move, type SetupInput } from '../model';
import {
  dropEntries,
  inOneList,
  known,
  measuredTestEntries,
  MOST_TESTS,
  type TestSession,
  type TimedDrop
} from '../wire';
import type { UnknownName } from '../scoring';

const test = v.strictObject(measuredTestEntries);

const HOW_MANY = `must hold 1 to ${MOST_TESTS} tests`;

/** As a scenario's own, which says how long it is waited after the move. */
const hold_s = v.pipe(v.number(), v.minValue(0), v.maxValue(600));

const schema = v.pipe(
  v.strictObject({
    gear: v.objectWithRest({ hold_s: v.optional(hold_s) }, v.unknown()),
    tests: v.pipe(v.array(test), v.minLength(1, HOW_MANY), v.maxLength(MOST_TESTS, HOW_MANY)),
    known: v.optional(known, {}),
    ...dropEntries
  }),
  v.transform((read) => inOneList(read))
);

/** One move with what was measured of it. A test without a measurement is only predicted. */
export interface PoolTest {
  readonly move: Move;
  /** Gear, water and start of this test: the session's gear with the test's own start. */
  readonly setup: SetupInput;
  /** How long it is waited after the move, s; left out, as long as the model does. */
  readonly hold_s?: number;
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
  /** The jig timed as it fell, before the drag area is fitted. */
  readonly drops: readonly TimedDrop[];
}

/**
 * Checks a session. SI units, named in each key; the format is in docs/fit.md.
 * Throws ScenarioError with the path ("tests.3.travel_m", "gear.line.diameter_m") and value of the
 * first fault.
 */
export function parseSession(input: unknown): Session {
  const parsed = v.safeParse(schema, input, { abortEarly: true });
  if (!parsed.success) throw faultOf(parsed.issues[0]);
  const { tests, known, drops } = parsed.output;
  const { hold_s, ...gear } = parsed.output.gear;
  const { bait } = inside('gear', () => parseSetup(gear));
  if (bait.drag_area_m2 === 0 && known.drag_area_m2 === undefined) {
    const reason = 'must be more than 0 to fit it, or be in known';
    throw new ScenarioError('gear.bait.drag_area_m2', 0, reason);
  }
  return {
    gear: gear as SetupInput,
    known,
    drops,
    tests: tests.map(({ start, depth_m, ...rest }, i) => {
      const water = { ...(gear.water as object), ...(depth_m !== undefined && { depth_m }) };
      const setup = { ...gear, water, start: { ...(gear.start as object), ...start } };
      inside(`tests.${i}`, () => parseSetup(setup));
      const hasOwnSlack = start?.slack_m !== undefined;
      return { ...rest, setup: setup as SetupInput, hasOwnSlack, hold_s };
    })
  };
}

/** What the fit reads of a stored session: without notes, and without what was clicked on a clip. */
export function sessionInputOf({
  gear,
  tests,
  known,
  drops
}: Pick<TestSession, 'gear' | 'tests' | 'known' | 'drops'>) {
  const read = tests.map(({ note, filmed, ...measured }) => {
    void [note, filmed];
    return measured;
  });
  return { gear, tests: read, known, drops };
}

function faultOf(issue: v.BaseIssue<unknown>): ScenarioError {
  const path = v.getDotPath(issue) ?? 'session';
  const isUnknown = issue.type === 'strict_object' && issue.expected === 'never';
  if (isUnknown) return new ScenarioError(path, issue.path?.at(-1)?.value, 'unknown key');
  if (issue.input === undefined) return new ScenarioError(path, undefined, 'is missing');
  const isOfType = issue.kind === 'schema' && issue.expected !== null;
  const reason = isOfType ? `expected ${issue.expected}` : issue.message;
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
