import { outfitGearOf } from '$lib/fit';
import { FIRST_GEAR, setupOf } from '$lib/sandbox';
import {
  withOutfitGear,
  type LearnerRecord,
  type Outfit,
  type StoredTest,
  type TestSession
} from '$lib/wire';

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
  const setup = setupOf({ ...FIRST_GEAR, depth_m, cast_m });
  const gear = outfit ? withOutfitGear(setup, gearAsPublished(outfit)) : setup;
  return {
    ...{ id, at, on, gear },
    name: `Filmed on ${on}`,
    by: '',
    notes: '',
    ...(outfit ? { outfit: outfit.id } : {}),
    tests: [test],
    drops: [],
    known: {},
    invented: false
  };
}

/** The fit goes on from what the label says, not from what an earlier fit has found. */
function gearAsPublished(outfit: Outfit) {
  return outfitGearOf({ ...outfit, asPublished: true });
}

/** The same session with one more test. */
export function withTest(session: TestSession, test: StoredTest, at: string): TestSession {
  return { ...session, at, tests: [...session.tests, test] };
}
