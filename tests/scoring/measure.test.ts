import { describe, expect, test } from 'vitest';
import { SKIP_M, simulate, type Move } from '../../src/lib/model';
import { contactWhileMoving, peakBaitSpeed, tipTravel } from '../../src/lib/scoring';
import { shownLifts } from '../../src/lib/sandbox/shown-lifts';
import { plainChallenge, resultOf, withLifts } from './results';

function run(move: Move, hold_s = 2) {
  return simulate({ ...plainChallenge.setup, rod: { length_m: 2.1 }, move, hold_s });
}

describe('tip travel', () => {
  test('of a lift is the arc', () => {
    const lifted = run({ kind: 'lift', from_deg: 5, to_deg: 35, duration_s: 2 });
    // Chords of 5 mm fall short of the arc by far less than 0.1 mm.
    expect(tipTravel(lifted)).toBeCloseTo((2.1 * Math.PI) / 6, 4);
  });

  test('of a sweep is how much nearer to the angler the tip came', () => {
    const { elevation_deg } = plainChallenge.reference;
    const swept = run({ kind: 'sweep', from_deg: 55, to_deg: 80, duration_s: 2, elevation_deg });
    const distance = (deg: number) => {
      const angle = (deg * Math.PI) / 180;
      return Math.hypot(9 - 2.1 * Math.cos(angle), 2.1 * Math.sin(angle));
    };
    expect(tipTravel(swept)).toBeCloseTo(distance(80) - distance(55), 4);
  });

  test('counts out and back both', () => {
    const there: Move = { kind: 'lift', from_deg: 0, to_deg: 20, duration_s: 1 };
    const back = { ...there, from_deg: 20, to_deg: 0 };
    const both = run({ kind: 'sequence', moves: [there, back] });
    // At the turn up to one step of the dividers is cut off each way.
    expect(Math.abs(tipTravel(both) - 2 * tipTravel(run(there)))).toBeLessThan(0.01);
  });

  test('of a trembling tip is nothing like the sum of its trembles', () => {
    const still = resultOf({ contact: new Array<1>(500).fill(1) });
    still.trace.tip_x_m = still.trace.tip_x_m.map((x, i) => x + (i % 2) * 0.003);
    expect(tipTravel(still)).toBeLessThan(0.004);
  });
});

describe('contact while moving', () => {
  const snatch: Move = {
    kind: 'sweep',
    from_deg: 55,
    to_deg: 85,
    duration_s: 0.6,
    elevation_deg: 0
  };

  test('is 1 for a bait that never moved', () => {
    expect(contactWhileMoving(resultOf({}))).toBe(1);
  });

  test('is not raised by waiting before the move', () => {
    const waited = run({
      kind: 'sequence',
      moves: [{ kind: 'sweep', from_deg: 55, to_deg: 55, duration_s: 8, elevation_deg: 0 }, snatch]
    });
    const direct = run(snatch);
    expect(waited.contact_fraction).toBeGreaterThan(0.8);
    expect(contactWhileMoving(direct)).toBeLessThan(0.5);
    // The line settles by a hair while waiting, which moves the lift-off by a few ticks.
    expect(Math.abs(contactWhileMoving(waited) - contactWhileMoving(direct))).toBeLessThan(0.1);
  });

  test.each([
    [0.95 * SKIP_M, 1],
    [1.05 * SKIP_M, 0.5]
  ])('of a flight of %f m is what its picture shows', (rise_m, share) => {
    const flown = resultOf({ contact: Array.from({ length: 41 }, (_, i) => (i > 20 ? 0 : 1)) });
    const { trace } = flown;
    trace.bait_z_m = trace.contact.map((touches) => (touches ? -3 : -3 + rise_m));
    expect(contactWhileMoving(withLifts(flown))).toBe(share);
    const shown = shownLifts(trace, () => -3).contact;
    expect(shown.filter((touches) => touches === 0).length / 40).toBe(1 - share);
  });
});

test('peak bait speed of a slow even drag is the tip’s', () => {
  const samples = Array.from({ length: 401 }, (_, i) => 60 + i * 0.04);
  const even = run({ kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg: samples });
  const { tip_x_m: x, t_s } = even.trace;
  const tipSpeed = (x[100] - x[300]) / (t_s[300] - t_s[100]);
  // The taut line's angle at the bait changes as it comes nearer; 15 % covers that and the start.
  expect(peakBaitSpeed(even) / tipSpeed).toBeGreaterThan(0.9);
  expect(peakBaitSpeed(even) / tipSpeed).toBeLessThan(1.15);
});
