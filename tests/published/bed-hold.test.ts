import { describe, expect, test } from 'vitest';
import { parseScenario, simulate, type ScenarioInput } from '../../src/lib/model';
import { baitOf } from '../../src/lib/model/bait';
import { GROUNDS } from '../../src/lib/model/ground';
import { waterAt } from '../../src/lib/model/water';
import { baitWith, lineWith, planeUnderBait, rigOf, WATER_15C } from './rig';

const HELD: ScenarioInput['move'] = {
  kind: 'tip_path',
  t_s: [0, 2],
  x_m: [1.9, 1.9],
  z_m: [1.2, 1.2]
};

describe('a bait on a slope of ground', () => {
  /** A cast that lies on a slope that falls away from the angler, on line that weighs next to nothing. */
  const onSlope = (friction: number, slope_deg: number) => {
    const fall = Math.tan((slope_deg * Math.PI) / 180);
    const scenario: ScenarioInput = {
      water: { depth_m: 5 },
      bottom: { friction, profile: { x_m: [8, 18], z_m: [-5 + 4 * fall, -5 - 6 * fall] } },
      line: { diameter_m: 6e-5, density_kg_m3: 1000 },
      bait: { mass_kg: 0.0213 },
      start: { bait_x_m: 12, slack_m: 0.4 },
      move: HELD,
      hold_s: 1
    };
    const result = simulate(scenario);
    const { weightInWater_N } = baitOf(parseScenario(scenario), waterAt(15));
    const slid = result.events.some(({ kind }) => kind === 'slid down');
    return { slid, pull_N: result.trace.bait_tension_N[0], weight_N: weightInWater_N };
  };

  // Coulomb, any statics text: it stays on slopes below atan μ and slides on steeper ones. Half a degree
  // to either side: the slack line's own pull is a thousandth of the bait's weight.
  test.each([0.15, 0.25, 0.4])('lies still up to atan(%f) and slides beyond it', (friction) => {
    const limit_deg = (Math.atan(friction) * 180) / Math.PI;
    expect(onSlope(friction, limit_deg - 0.5).slid).toBe(false);
    expect(onSlope(friction, limit_deg + 0.5).slid).toBe(true);
  });

  test('that is too steep hangs on its line by what friction leaves: W (sin β − μ cos β)', () => {
    const friction = 0.2;
    const { pull_N, weight_N } = onSlope(friction, 25);
    const beta = (25 * Math.PI) / 180;
    const left_N = weight_N * (Math.sin(beta) - friction * Math.cos(beta));
    // The line comes down on it at a few degrees to the slope: its cosine and its lift are within 5 %.
    expect(Math.abs(pull_N / left_N - 1)).toBeLessThan(0.05);
  });
});

describe('mud', () => {
  const { friction, breakout_N } = GROUNDS.mud;
  const WEIGHT_N = 0.18;
  const STEP_S = 0.001;
  const FOOT = { x: 6, z: -6 };

  /** Pull at which a bait that has lain for `rest_s` gives, drawn slowly by a line at `angle_deg`. */
  function breakaway_N(rest_s: number, angle_deg: number): number {
    const a = (angle_deg * Math.PI) / 180;
    const length = 5;
    const tip = { x: FOOT.x - length * Math.cos(a), z: FOOT.z + length * Math.sin(a) };
    const line = lineWith({
      segments: 4,
      diameter_m: 0.0002,
      density_kg_m3: WATER_15C.density_kg_m3,
      youngs_modulus_Pa: 2.5e9
    });
    const bait = baitWith({ mass_kg: 0.02, weightInWater_N: WEIGHT_N });
    const ground = { ...planeUnderBait(FOOT, friction), breakout_N };
    const { solver, state } = rigOf(line, bait, ground, tip, FOOT, length);
    state.rest_s = rest_s;
    // Some 0.2 m/s: the pull has grown to its breaking in well under the two seconds mud needs to close.
    for (let t = STEP_S; t < 5; t += STEP_S) {
      const before = solver.tensionNow(3);
      solver.step(STEP_S, { x: tip.x - 0.2 * t * Math.cos(a), z: tip.z + 0.2 * t * Math.sin(a) });
      if (state.x[4] < FOOT.x - 1e-7 || state.z[4] > FOOT.z + 1e-7) return before;
    }
    return NaN;
  }

  // What friction holds, P = μW/(cos α + μ sin α) (any statics text), and what the mud holds besides,
  // which counts against the pull along the bottom like a load: (μW + B)/(cos α + μ sin α).
  test.each([
    [Infinity, 0, 1],
    [Infinity, 20, 1],
    [2, 10, 1 - Math.exp(-1)],
    [0, 10, 0]
  ])(
    'holds a bait that has lain %f s, drawn at %f°, with %f of its breakout',
    (rest, angle, share) => {
      const a = (angle * Math.PI) / 180;
      const exact =
        (friction * WEIGHT_N + share * breakout_N) / (Math.cos(a) + friction * Math.sin(a));
      // Stretched by 0.2 mm a step the pull grows by up to 3 mN, and mud closes on a bait that waits while
      // the line tightens, 1 % of what is missing in 20 ms.
      expect(Math.abs(breakaway_N(rest, angle) - exact)).toBeLessThan(
        0.006 + 0.04 * breakout_N * (1 - share)
      );
    }
  );

  // A plate on soft clay comes out by N su A at most, N about 6.2 for a round one at the surface (Skempton
  // 1951, from memory), su its strength undrained: below 20 kPa it is called very soft (BS 5930, from memory).
  test.each(['mud', 'clay'] as const)('%s holds no harder than very soft ground can', (kind) => {
    const { radius_m } = baitOf(parseScenario(cast(kind)), waterAt(15));
    const strength_Pa = GROUNDS[kind].breakout_N / (6.2 * Math.PI * radius_m ** 2);
    expect(strength_Pa).toBeGreaterThan(50);
    expect(strength_Pa).toBeLessThan(20_000);
  });

  test('lets go of a jig once, and holds it less on its way', () => {
    const { trace } = simulate(cast('mud'));
    const moving = trace.bait_x_m.findIndex((x) => x < trace.bait_x_m[0] - 0.001);
    const first = Math.max(...trace.bait_tension_N.slice(0, moving + 5));
    const later = Math.max(...trace.bait_tension_N.slice(moving + 100));
    expect(first).toBeGreaterThan(1.5 * later);
  });

  function cast(kind: 'mud' | 'clay'): ScenarioInput {
    return {
      water: { depth_m: 4 },
      bottom: { ground: { kind } },
      line: { diameter_m: 0.0003 },
      bait: { mass_kg: 0.0142 },
      start: { bait_x_m: 16, slack_m: 0.05 },
      move: { kind: 'sweep', from_deg: 0, to_deg: 70, duration_s: 6 },
      hold_s: 1
    };
  }
});
