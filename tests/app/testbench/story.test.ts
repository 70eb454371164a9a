import { expect, test } from 'vitest';
import * as v from 'valibot';
import { cardFigures } from '../../../src/lib/compute/jobs/card';
import { movesForPlan, weightForPlan } from '../../../src/lib/compute/jobs/plan';
import { weightUse } from '../../../src/lib/course/plan';
import {
  fit,
  lineFallTime_s,
  newTestSession,
  outfitGearOf,
  parseSession,
  sessionFromLog,
  sessionInputOf,
  testedBefore
} from '../../../src/lib/fit';
import { simulate, type Move, type SetupInput } from '../../../src/lib/model';
import { applyChange } from '../../../src/lib/practice';
import { withOwnNumbers } from '../../../src/lib/app/testbench/report-words';
import {
  emptyRecord,
  logEntry,
  type LogEntry,
  type Outfit,
  type PlanAsked
} from '../../../src/lib/wire';
import { anEntry, anOutfit } from '../../practice/samples';

/** What nobody in the story knows of the jig: a big skirt that planes a little. */
const TRUTH = { drag_area_m2: 9.5e-4, lift_to_drag: 0.15 };
const POOL_MOVES: Move[] = [
  { kind: 'sweep', from_deg: 0, to_deg: 60, duration_s: 3, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 40, duration_s: 1.5 },
  { kind: 'sweep', from_deg: 30, to_deg: 60, duration_s: 0.5, elevation_deg: 0 },
  { kind: 'lift', from_deg: 0, to_deg: 20, duration_s: 0.3 }
];
const day = (n: number) => ({ at: `2030-05-0${n}T08:00:00.000Z`, on: `2030-05-0${n}` });
const asked: PlanAsked = {
  depth_m: 6,
  ground: 'sand',
  temperature_C: 15,
  wind: 'calm',
  fish: 'slow',
  light: 'clouds',
  out_m: 12,
  minutes: 180,
  clients: 0
};
const trueBait = (setup: SetupInput): SetupInput => ({
  ...setup,
  bait: { ...setup.bait, ...TRUTH }
});

/** How wide what is not known of the drag area is, as a factor. */
function widthOf({ own }: Outfit): number {
  const [least, most] = own?.unknowns.drag_area_m2?.interval90 ?? [0, Infinity];
  return most / least;
}

test('pool, fit, plan, card, log, and the card again from what the boat has told', () => {
  let record = applyChange(emptyRecord(), { kind: 'outfit kept', outfit: anOutfit('o1') });
  const outfit = () => record.outfits[0];

  // At the pool: four moves measured with a tape, to the centimetre.
  const empty = newTestSession({ id: 'session-at-the-pool', ...day(1) }, outfit());
  const tests = POOL_MOVES.map((move) => {
    const { travel_m, peak_height_m } = simulate({ ...trueBait(empty.gear), move });
    const tape = (m: number) => Math.round(m * 100) / 100;
    return { move, travel_m: tape(travel_m), peak_height_m: tape(peak_height_m), note: '' };
  });
  const pool = { ...empty, tests };
  record = applyChange(record, { kind: 'session kept', session: pool });
  const fitted = fit(parseSession(sessionInputOf(pool)));
  const afterPool = withOwnNumbers(outfit(), pool, fitted, day(1).at);
  record = applyChange(record, { kind: 'outfit kept', outfit: { ...afterPool, at: day(2).at } });

  // At home: the plan and the card, from the outfit's own numbers.
  const gear = outfitGearOf(outfit());
  const weight = weightForPlan({ asked, gear, units: 'metric' });
  expect(weight.outfit).toBe('o1');
  expect(weightUse(weight)).not.toBe('lifts');
  const [drag] = movesForPlan({ asked, gear, units: 'metric', retrieves: ['drag'] });
  expect(drag.came).not.toBeNull();
  const wanted = {
    depths_m: [4, 6] as const,
    out_m: 12,
    temperature_C: 15,
    bottom: 'sand',
    wind: asked.wind,
    units: 'metric'
  } as const;
  const before = cardFigures({ ...wanted, gear });

  // In the boat: three drops beside it, timed with a thumb.
  const boat = { ...trueBait(pool.gear), water: { depth_m: 6, temperature_C: 15 } };
  const fall_s = lineFallTime_s(boat, TRUTH.drag_area_m2, 6);
  const entry: LogEntry = anEntry('entry-of-the-first-day', {
    ...day(3),
    depth_m: 6,
    temperature_C: 15,
    drops_s: [0.1, -0.1, 0].map((thumb_s) => fall_s + thumb_s)
  });
  record = applyChange(record, { kind: 'logged', entry: v.parse(logEntry, entry) });

  // Home again: the log goes through the same fit, after the pool's tests.
  const root = testedBefore(outfit(), record.sessions);
  expect(root?.id).toBe(pool.id);
  const session = sessionFromLog(
    { id: 'session-from-the-log', ...day(4) },
    outfit(),
    record.entries,
    root
  )!;
  expect(session.tests).toHaveLength(POOL_MOVES.length);
  const refitted = fit(parseSession(sessionInputOf(session)));
  const refined = withOwnNumbers(outfit(), session, refitted, day(4).at);
  record = applyChange(record, { kind: 'outfit kept', outfit: refined });

  // The drag area is known better than after the pool, and holds the truth.
  expect(widthOf(refined)).toBeLessThan(widthOf(afterPool));
  const [least, most] = refined.own?.unknowns.drag_area_m2?.interval90 ?? [1, 0];
  expect(TRUTH.drag_area_m2).toBeGreaterThan(least);
  expect(TRUTH.drag_area_m2).toBeLessThan(most);

  // And the card counts the fall with a narrower band.
  const after = cardFigures({ ...wanted, gear: outfitGearOf(outfit()) });
  const halfAt = (falls: typeof after.falls, m: number) => falls.find(([d]) => d === m)?.[2] ?? 0;
  expect(halfAt(after.falls, 6)).toBeLessThan(halfAt(before.falls, 6));
}, 240_000);
