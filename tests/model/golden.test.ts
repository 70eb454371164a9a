import { expect, test } from 'vitest';
import { MODEL_VERSION } from '../../src/lib/model';
import { GOLDEN_CASES, goldenTrace, type GoldenTrace } from './golden-cases';
import golden from './golden.json' with { type: 'json' };

/**
 * One engine gives the same bits; another differs in the last bits of sin, cos and exp, and a bait that
 * lands or a line that tightens carries that on by a factor of about 1e9 at most. A change of the
 * model's numbers is larger: the smallest so far moved travel by 0.3 mm.
 */
const PLACE_M = 1e-5;
/** The same at the stiffness of a metre of line, some 200 N/m, with room for the rounding of the file. */
const PULL_N = 2e-3;

const traces: Record<string, GoldenTrace> = golden.traces;

test('the golden traces are of this version: after a change of MODEL_VERSION, npm run golden', () => {
  expect(golden.version).toBe(MODEL_VERSION);
  expect(Object.keys(traces)).toEqual(Object.keys(GOLDEN_CASES));
});

test.each(Object.keys(GOLDEN_CASES))(
  'a run of "%s" is as it was; if it was meant to change, raise MODEL_VERSION and npm run golden',
  (name) => {
    const now = goldenTrace(GOLDEN_CASES[name]);
    const was = traces[name];
    expect(now.events).toEqual(was.events);
    expect(Math.abs(now.travel_m - was.travel_m)).toBeLessThan(PLACE_M);
    expect(Math.abs(now.peak_height_m - was.peak_height_m)).toBeLessThan(PLACE_M);
    expect(Math.abs(now.peak_tip_tension_N - was.peak_tip_tension_N)).toBeLessThan(PULL_N);
    const away = was.bait_x_m.map((x, i) =>
      Math.hypot(now.bait_x_m[i] - x, now.bait_z_m[i] - was.bait_z_m[i])
    );
    expect(Math.max(...away)).toBeLessThan(PLACE_M);
  }
);
