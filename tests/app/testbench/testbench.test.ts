import { describe, expect, test } from 'vitest';
import { demoSession } from '../../../src/lib/app/testbench/demo-session';
import { heldOutText, withOwnNumbers } from '../../../src/lib/app/testbench/report-words';
import {
  residualScale,
  shownResiduals,
  residualText
} from '../../../src/lib/app/testbench/residuals';
import { openSessionFile, sessionFile } from '../../../src/lib/app/testbench/session-file';
import { emptyRow, readRows, rowOf } from '../../../src/lib/app/testbench/test-rows';
import { readWater, waterDraftOf } from '../../../src/lib/app/testbench/water-draft';
import {
  fit,
  newTestSession,
  outfitGearOf,
  parseSession,
  sessionInputOf,
  withOutfit
} from '../../../src/lib/fit';
import { outfit as outfitSchema, testSession } from '../../../src/lib/wire';
import * as v from 'valibot';
import { anOutfit, aSession } from '../../practice/samples';

const made = { id: 'session-of-one-day', at: '2030-05-01T12:00:00.000Z', on: '2030-05-01' };
const demo = demoSession(made);
const result = fit(parseSession(sessionInputOf(demo)));

describe('the demo', () => {
  test('is a session of invented data, and says so', () => {
    expect(v.parse(testSession, demo)).toEqual(demo);
    expect(demo.invented).toBe(true);
  });

  test('is fitted to the values it was made with', () => {
    const truth = { reach_m: 2.04, slack_m: 0.115, drag_area_m2: 3.5e-4, lift_to_drag: 0.234 };
    for (const [name, value] of Object.entries(truth)) {
      const [least, most] = result.unknowns[name as keyof typeof truth]?.interval90 ?? [0, 0];
      expect(value, name).toBeGreaterThan(least);
      expect(value, name).toBeLessThan(most);
    }
  });
});

describe('a session', () => {
  test('begins in a pool with the outfit as labelled, never with what was fitted to it', () => {
    const own = withOwnNumbers(anOutfit('o1'), demo, result, made.at);
    const session = newTestSession(made, own);
    expect(session.gear.rod?.length_m).toBeCloseTo(1.8, 9);
    expect(session).toMatchObject({ outfit: 'o1', tests: [] });
    expect(v.safeParse(testSession, session).success).toBe(true);
  });

  test('takes the drop of its outfit, and leaves that of another behind', () => {
    const drop = { distance_m: 2, times_s: [2], temperature_C: 15, has_line: false };
    const timed = anOutfit('o1', { jig: { ...anOutfit('o1').jig, drop } });
    const session = newTestSession(made, timed);
    expect(session.drops).toEqual([drop]);
    expect(withOutfit(session, anOutfit('o2')).drops).toEqual([]);
  });

  test('goes into a file and comes back, and another file is refused with a word', async () => {
    expect(await openSessionFile(sessionFile(demo))).toEqual({ session: demo });
    for (const text of [
      '',
      '[1]',
      '{"format":"feltfoot-record"}',
      JSON.stringify({ ...demo, tests: [1] })
    ]) {
      expect(await openSessionFile(new Blob([text]))).toMatchObject({
        fault: expect.stringMatching(/\.$/)
      });
    }
  });
});

describe('the table', () => {
  test.each(['imperial', 'metric'] as const)('shows a test and reads it back, %s', (units) => {
    const rows = demo.tests.map((one, i) => rowOf(one, i, units));
    const { tests, faults } = readRows([...rows, emptyRow(99)], units);
    expect(faults).toEqual([]);
    expect(tests).toHaveLength(demo.tests.length);
    tests.forEach((one, i) => {
      expect(one.move).toEqual(demo.tests[i].move);
      // A field shows hundredths of an inch.
      expect(one.travel_m).toBeCloseTo(demo.tests[i].travel_m ?? NaN, 3);
    });
  });

  test('keeps a filmed move and its points as they are, whatever is typed beside it', () => {
    const move = {
      kind: 'rod_input',
      rate_Hz: 100,
      elevation_deg: 8,
      azimuth_deg: [0, 1, 2]
    } as const;
    const filmed = {
      scale: {
        points_px: [
          [0, 0],
          [100, 0]
        ] as [number, number][],
        lengths_m: [1]
      },
      errors: { click_px: 2, track_px: 0.3, lens_share: 0.02, plane_share: 0 }
    };
    const stored = { move: { ...move, azimuth_deg: [0, 1, 2] }, travel_m: 0.5, note: '', filmed };
    const row = rowOf(stored, 0, 'metric');
    row.cells.note = 'wind';
    expect(readRows([row], 'metric').tests).toEqual([{ ...stored, note: 'wind' }]);
  });

  test('names row and field of what cannot be read', () => {
    const rows = [emptyRow(0), emptyRow(1, { to_deg: '60', duration_s: '3', travel_m: 'far' })];
    expect(readRows(rows, 'imperial').faults).toEqual([
      { key: 1, field: 'travel_m', says: 'Row 2: Jig went must be a length, not “far”.' }
    ]);
  });
});

test('the water is typed in the learner’s units; what cannot be is said by its field', () => {
  const { gear } = aSession('session-of-one-day');
  const draft = waterDraftOf({ gear }, 'imperial');
  expect(readWater({ ...draft, depth: '12' }, gear, 'imperial')).toMatchObject({
    gear: { water: { depth_m: 12 * 0.3048 } }
  });
  expect(readWater({ ...draft, depth: 'deep' }, gear, 'imperial')).toMatchObject({
    field: 'depth'
  });
  expect(readWater({ ...draft, cast: '4000' }, gear, 'imperial')).toMatchObject({ field: 'cast' });
});

describe('what the tests tell', () => {
  test('becomes the outfit’s own numbers, as the record keeps them', () => {
    const own = withOwnNumbers(anOutfit('o1', { asPublished: true }), demo, result, made.at);
    expect(v.parse(outfitSchema, own)).toEqual(own);
    expect(outfitGearOf(own).rod.length_m).toBe(result.unknowns.reach_m?.estimate);
  });

  test('stands beside what was measured, each with its band', () => {
    const moves = demo.tests.map(({ move }) => move);
    const travel = shownResiduals(result, moves, 'travel');
    expect(travel).toHaveLength(moves.length);
    for (const { off_m, band_m, isInside } of travel) {
      expect(isInside).toBe(off_m >= band_m[0] && off_m <= band_m[1]);
    }
    const scale = residualScale(travel, 'imperial', 0, 300);
    for (const { off_m } of travel) expect(scale.x(off_m)).toBeGreaterThanOrEqual(0);
    expect(scale.x(0)).toBeCloseTo(150, 6);
    expect(residualText(travel[0], 'metric')).toMatch(/^Measured 1.03\sm, predicted .+ to .+$/);
  });

  test('one test that was held back is said with its band', () => {
    if (!result.held_out) throw new Error('nothing was held out');
    expect(heldOutText(result.held_out, 'metric')).toMatch(
      /^Test 10 from the others alone: travel .+ to .+, measured 81\scm; highest .+, measured 18\scm\.$/
    );
  });
});
