import { INCH_M, FOOT_M, type SetupInput } from '../model';
import {
  MOST_TESTS,
  withOutfitGear,
  type LogEntry,
  type Outfit,
  type StoredTest,
  type TestSession
} from '../wire';
import { outfitGearOf } from './outfit';

/** Water and cast that a session begins with, where nobody has said: a pool, or a boat at anchor. */
const BEGINS: Pick<SetupInput, 'water' | 'start'> = {
  water: { depth_m: 8 * FOOT_M },
  start: { bait_x_m: 40 * FOOT_M, slack_m: 6 * INCH_M }
};
const NO_GEAR = {
  line: { material: 'fluorocarbon', diameter_m: 0.28e-3 },
  bait: { mass_kg: 0.0142 },
  rod: { length_m: 1.8 }
} as const;

type SessionStamp = Pick<TestSession, 'id' | 'at' | 'on'>;

const BLANK = { by: '', notes: '', tests: [], drops: [], known: {}, invented: false };

/** An empty session, with this outfit if there is one. */
export function newTestSession(made: SessionStamp, outfit: Outfit | undefined): TestSession {
  const gear = { ...BEGINS, ...NO_GEAR };
  const session = { ...made, ...BLANK, name: 'New session', gear };
  return outfit ? withOutfit(session, outfit) : session;
}

/** The session with this outfit as labelled: what is fitted must not start from what was fitted. */
export function withOutfit(session: TestSession, outfit: Outfit): TestSession {
  const { own, ...labelled } = outfit;
  const { drop, ...jig } = outfit.jig;
  void own;
  const gear = withOutfitGear(session.gear, outfitGearOf({ ...labelled, jig }));
  return { ...session, outfit: outfit.id, gear, drops: drop ? [drop] : [] };
}

/** What an entry adds to the fit of its outfit. */
export const isMeasured = ({ drops_s, looks }: LogEntry) => drops_s.length + looks.length > 0;

/** A drag that is predicted where nothing but drops was measured: a fit wants one test. */
const ONLY_PREDICTED: StoredTest = {
  move: { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 },
  note: 'Only predicted'
};

/**
 * A session of what the log measured of an outfit, after the tests it was fitted to before: `before`
 * with its own tests, drops and water, and each look and drop in the depth where it was made. Null where
 * the log measured nothing of it.
 */
export function sessionFromLog(
  made: SessionStamp,
  outfit: Outfit,
  entries: readonly LogEntry[],
  before: TestSession | undefined
): TestSession | null {
  const measured = entries.filter((one) => one.outfit === outfit.id && isMeasured(one));
  if (measured.length === 0) return null;
  const base = before ?? newTestSession(made, outfit);
  const looked = measured.flatMap(testsOf);
  const tests = [...base.tests, ...looked];
  return {
    ...base,
    ...made,
    name: `${outfit.name}, with the log`.slice(0, 80),
    from_log: before ? { after: before.id } : {},
    outfit: outfit.id,
    tests: (tests.length > 0 ? tests : [ONLY_PREDICTED]).slice(-MOST_TESTS),
    drops: [...base.drops, ...measured.flatMap(dropOf)]
  };
}

/** The session whose tests an outfit's numbers rest on, before any log was added to it. */
export function testedBefore(
  { own }: Outfit,
  sessions: readonly TestSession[]
): TestSession | undefined {
  const named = (id: string | undefined) => sessions.find((one) => one.id === id);
  const last = named(own?.session);
  return last?.from_log ? named(last.from_log.after) : last;
}

function testsOf({ on, depth_m, retrieve, looks }: LogEntry): StoredTest[] {
  return looks.map(({ move, out_m, travel_m, peak_height_m }) => ({
    move,
    depth_m,
    start: { bait_x_m: out_m },
    ...(travel_m !== undefined && { travel_m }),
    ...(peak_height_m !== undefined && { peak_height_m }),
    note: `${on}, ${retrieve}`
  }));
}

function dropOf({ depth_m, drops_s, temperature_C = 15 }: LogEntry) {
  if (drops_s.length === 0) return [];
  return [{ distance_m: depth_m, times_s: drops_s, temperature_C, has_line: true }];
}
