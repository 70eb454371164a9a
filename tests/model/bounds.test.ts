import { describe, expect, test } from 'vitest';
import { simulate, type ScenarioInput } from '../../src/lib/model';

const CAST: ScenarioInput = {
  water: { depth_m: 4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.0142 },
  start: { bait_x_m: 16, slack_m: 0.1 },
  move: { kind: 'sweep', from_deg: 0, to_deg: 40, duration_s: 2 }
};

describe('what a run may cost', () => {
  test.each([
    ['numerics.step_s', { numerics: { step_s: 1e-6 } }],
    ['numerics.segments', { numerics: { segments: 640 }, hold_s: 120 }],
    [
      'move',
      { move: { kind: 'tip_path', t_s: [0, 120_000], x_m: [1.9, 1.9], z_m: [1.2, 1.2] } as const }
    ]
  ])('is bounded, and %s is named where it is out of the way', (path, change) => {
    expect(() => simulate({ ...CAST, ...change })).toThrow(
      new RegExp(`^(${path.replace('.', '\\.')}).*`)
    );
  });

  test('leaves room for a minute with three hundred pieces', () => {
    // Thrown for another reason, after the cost was found to be fair: it need not be run.
    const far = { ...CAST, start: { bait_x_m: 0, slack_m: 0 }, hold_s: 60 };
    expect(() => simulate({ ...far, numerics: { segments: 320 } })).not.toThrow(/node-steps/);
  });
});

test('a bait at the tip of the rod is refused by its field', () => {
  const at_tip = { kind: 'tip_path', t_s: [0, 1], x_m: [8, 8], z_m: [-4, -4] } as const;
  expect(() => simulate({ ...CAST, start: { bait_x_m: 8 }, move: at_tip })).toThrow(
    /^start\.bait_x_m: puts the bait at the tip/
  );
});

test('to fall off a ledge is no height: what counts is the rise above where it lay', () => {
  const ledge = { x_m: [0, 14.5, 14.6, 40], z_m: [-6, -6, -4, -4] };
  const result = simulate({
    ...CAST,
    water: { depth_m: 6 },
    bottom: { profile: ledge },
    start: { bait_x_m: 15.2, slack_m: 0.02 },
    move: { kind: 'sweep', from_deg: 30, to_deg: 80, duration_s: 6 },
    hold_s: 6
  });
  const z = result.trace.bait_z_m;
  expect(Math.min(...z)).toBeLessThan(-5.9);
  expect(result.airborne_s).toBeGreaterThan(1);
  // A slow drag never lifts it (any statics text: every lift is dynamic); a centimetre for the edge.
  expect(result.peak_height_m).toBeLessThan(0.01);
  expect(result.hops.every(({ height_m }) => height_m < 0.01)).toBe(true);
});

test.each([
  ['fluorocarbon', 16, 5],
  ['braid', 20, 5],
  ['braid', 20, 15]
] as const)(
  '%s reeled to the boat, %s m in %s s, pulls no harder than its parts can',
  (material, line_m, duration_s) => {
    const result = simulate({
      ...CAST,
      line: { material, diameter_m: 0.00028 },
      move: {
        kind: 'sequence',
        moves: [
          { kind: 'lift', from_deg: 0, to_deg: 0.01, duration_s: 0.1 },
          { kind: 'reel', line_m, duration_s }
        ]
      },
      hold_s: 3
    });
    // The clutch slips at 60 N. A bait whirled on a metre of line at the reel's 4 m/s, stopped by it as a
    // spring: v √(EA m / L) = 4 √(1231 × 0.0142 / 1) = 17 N more.
    expect(result.peak_tip_tension_N).toBeLessThan(80);
  }
);
