import { describe, expect, test } from 'vitest';
import {
  FELT_RATE_HZ,
  feltSignal,
  parseScenario,
  passedOn,
  simulateScenario,
  type ScenarioInput
} from '../../src/lib/model';

const DRAG: ScenarioInput = {
  water: { depth_m: 3.4 },
  bottom: { ground: { kind: 'sand', seed: 2 } },
  line: { diameter_m: 0.0003 },
  bait: { mass_kg: 0.0177 },
  start: { bait_x_m: 14, slack_m: 0.06 },
  move: { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 4 },
  hold_s: 1
};

function felt(change: Partial<ScenarioInput> = {}) {
  const { move, hold_s, ...setup } = parseScenario({ ...DRAG, ...change });
  const { trace } = simulateScenario({ ...setup, move, hold_s });
  return { signal: feltSignal(setup, trace), trace };
}

const rms = (signal: Float32Array) =>
  Math.sqrt(signal.reduce((sum, value) => sum + value * value, 0) / signal.length);

/** Mean rate of sign changes between two times, 1/s. */
function pitch(signal: Float32Array, from_s: number, to_s: number): number {
  let changes = 0;
  const from = Math.round(from_s * FELT_RATE_HZ);
  const to = Math.round(to_s * FELT_RATE_HZ);
  // Of the grain alone: differences leave out the slow swings of the pull.
  const steps = signal.slice(from, to).map((value, i) => signal[from + i + 1] - value);
  for (let i = 1; i < steps.length; i++) if (steps[i] * steps[i - 1] < 0) changes++;
  return changes / (to_s - from_s);
}

describe('what a line passes on', () => {
  // Ernst 1965: E_eq = E / (1 + (wL)² EA / (12 T³)).
  test('is half where the pull cubed is (wL)²EA/12', () => {
    const half = Math.cbrt((0.013 ** 2 * 200) / 12);
    expect(passedOn(0.013, 200, half)).toBeCloseTo(0.5, 12);
  });
  test('is nothing when slack and all when tight', () => {
    expect(passedOn(0.013, 200, 0)).toBe(0);
    expect(passedOn(0.013, 200, 5)).toBeGreaterThan(0.999);
  });
});

describe('the felt signal', () => {
  test('has one stretch of samples a tick and only finite values', () => {
    const { signal, trace } = felt();
    expect(signal).toHaveLength((trace.t_s.length - 1) * (FELT_RATE_HZ / 100));
    expect(signal.every(Number.isFinite)).toBe(true);
  });

  test('of a bait that lies still is silence', () => {
    const held = { kind: 'tip_path' as const, t_s: [0, 2], x_m: [1.9, 1.9], z_m: [1.2, 1.2] };
    expect(rms(felt({ move: held }).signal)).toBeLessThan(1e-4);
  });

  test('of a fast drag over sand is higher than that of a slow one', () => {
    const fast = felt({ move: { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 4 } }).signal;
    const slow = felt({ move: { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 12 } }).signal;
    expect(pitch(fast, 1.8, 2.4)).toBeGreaterThan(1.5 * pitch(slow, 5.5, 7));
  });

  test('of gravel is rougher than that of clay', () => {
    const over = (kind: 'gravel' | 'clay') =>
      felt({ bottom: { ground: { kind, seed: 4 } } }).signal;
    expect(rms(over('gravel'))).toBeGreaterThan(1.5 * rms(over('clay')));
  });
});
