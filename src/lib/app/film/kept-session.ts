import { withOutfit } from '$lib/fit';
import { FIRST_GEAR, setupOf } from '$lib/sandbox';
import type { LearnerRecord, StoredTest, TestSession } from '$lib/wire';

export interface PoolWater {
  readonly depth_m: number;
  /** From the rod hand to the jig, level. */
  readonly cast_m: number;
}

interface Made {
  readonly id: string;
  /** ISO time and day of somebody's calendar. */
  readonly at: string;
  readonly on: string;
}

/** A new session with this test, in the outfit that is in hand. Throws ScenarioError where the line cannot reach. */
export function newSession(
  test: StoredTest,
  { depth_m, cast_m }: PoolWater,
  { outfits, settings }: Pick<LearnerRecord, 'outfits' | 'settings'>,
  { id, at, on }: Made
): TestSession {
  const outfit = outfits.find((one) => one.id === settings.outfit);
  const session: TestSession = {
    ...{ id, at, on },
    name: `Filmed on ${on}`,
    by: '',
    notes: '',
    gear: setupOf({ ...FIRST_GEAR, depth_m, cast_m }),
    tests: [test],
    drops: [],
    known: {},
    invented: false
  };
  return outfit ? withOutfit(session, outfit) : session;
}

/** The same session with one more test. */
export function withTest(session: TestSession, test: StoredTest, at: string): TestSession {
  return { ...session, at, tests: [...session.tests, test] };
}
