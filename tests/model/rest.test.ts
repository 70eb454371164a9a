import { describe, expect, test } from 'vitest';
import { parseScenario, simulate, type ScenarioInput } from '../../src/lib/model';
import { baitOf } from '../../src/lib/model/bait';
import { Run } from '../../src/lib/model/run';
import { tipPathOf } from '../../src/lib/model/tip-path';
import { waterAt } from '../../src/lib/model/water';
import { differenceOf, isWithin, waitCase } from './waits';

/** 5 m deep, 20 m out, 14 g, 0.3 m of slack, a sweep of 50° in a second. */
const CAST: ScenarioInput = {
  water: { depth_m: 5 },
  line: { material: 'fluorocarbon', diameter_m: 0.00033 },
  bait: { mass_kg: 0.014 },
  start: { bait_x_m: 20, slack_m: 0.3 },
  move: { kind: 'sweep', from_deg: 0, to_deg: 50, duration_s: 1 }
};
const travel = (bottom: ScenarioInput['bottom'], slack_m = 0.3) =>
  simulate({ ...CAST, bottom, start: { ...CAST.start, slack_m } }).travel_m;

describe('a start is at rest', () => {
  const LEVEL = { profile: { x_m: [-10, 60], z_m: [-5, -5] } };
  const BEHIND = { stones: [{ x_m: 24, width_m: 0.3, height_m: 0.2 }] };

  test.each([0.15, 0.3])('a level profile is flat ground, with %s m of slack', (slack_m) => {
    // The same line is laid on both; the contact of the bait is computed another way.
    expect(travel(LEVEL, slack_m)).toBeCloseTo(travel({}, slack_m), 4);
  });

  test.each([0.15, 0.3])(
    'a stone behind the bait changes nothing, with %s m of slack',
    (slack_m) => {
      expect(travel(BEHIND, slack_m)).toBeCloseTo(travel({}, slack_m), 4);
    }
  );

  test.each([-8, 0, 4, 8])(
    'where the pieces of a straight slope of %d° meet changes nothing',
    (deg) => {
      const slope = Math.tan((deg * Math.PI) / 180);
      const lifted = (x_m: number[]) => {
        const { travel_m, trace } = simulate({
          ...CAST,
          water: { depth_m: 6 },
          bottom: { profile: { x_m, z_m: x_m.map((x) => -6 + slope * (x - 20)) } },
          bait: { mass_kg: 0.0283 },
          start: { bait_x_m: 20, slack_m: 0.02 },
          move: { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 1 }
        });
        return [travel_m, trace.bait_x_m[0], trace.tip_tension_N[0]];
      };
      const whole = lifted([0, 45]);
      // Under the bait and just beside it; the same surface, so the same but for rounding.
      for (const pieces of [lifted([0, 20, 45]), lifted([0, 19.999, 45])])
        pieces.forEach((value, i) => expect(value).toBeCloseTo(whole[i], 5));
    }
  );

  test('nothing moves while nothing is done, without slack too', () => {
    const { travel_m } = simulate({
      ...CAST,
      start: { bait_x_m: 20, slack_m: 0 },
      move: { kind: 'tip_path', t_s: [0, 30], x_m: [1.9, 1.9], z_m: [1.2, 1.2] }
    });
    expect(Math.abs(travel_m)).toBeLessThan(1e-3);
  });

  test('a line that pulls harder than the bottom holds has drawn the bait in, and says so', () => {
    const { events, trace } = simulate({ ...CAST, start: { bait_x_m: 20, slack_m: 0 } });
    const [first] = events;
    expect(first).toMatchObject({ kind: 'pulled in', t_s: 0 });
    const by_m = first.kind === 'pulled in' ? first.by_m : NaN;
    expect(by_m).toBeGreaterThan(0.01);
    expect(trace.bait_x_m[0]).toBeCloseTo(20 - by_m, 9);
  });

  test('a bait that lies slack is where it was put', () => {
    const { events, trace } = simulate(CAST);
    expect(events.filter(({ kind }) => kind === 'pulled in')).toEqual([]);
    expect(trace.bait_x_m[0]).toBeCloseTo(20, 3);
  });

  test('on ground steeper than friction holds, the bait hangs on its line, and says how far it slid', () => {
    const friction = 0.1;
    const steep = { friction, profile: { x_m: [0, 40], z_m: [-1, -21] } };
    const { events, trace } = simulate({ ...CAST, bottom: steep });
    expect(events[0]).toMatchObject({ kind: 'slid down', t_s: 0 });
    expect(trace.bait_x_m[0]).toBeGreaterThan(20.1);
    // Coulomb on a slope: W (sin θ − μ cos θ) is left for the line, which here runs along the slope
    // within a few degrees (cosine within 1 %) and bears half a piece of its own (2 mN).
    const { weightInWater_N } = baitOf(parseScenario(CAST), waterAt(15));
    const slope = Math.atan(20 / 40);
    const left_N = weightInWater_N * (Math.sin(slope) - friction * Math.cos(slope));
    expect(Math.abs(trace.bait_tension_N[0] - left_N)).toBeLessThan(0.003);
  });

  test('what never comes to rest is refused, by its field and with what to change', () => {
    // Ten metres of spare braid in half a gale: it flaps on.
    const flapping = (slack_m: number) => ({
      ...CAST,
      line: { material: 'braid' as const, diameter_m: 0.0003 },
      wind_m_s: 20,
      start: { bait_x_m: 20, slack_m }
    });
    expect(() => simulate(flapping(10))).toThrow(/^start: .*do not come to rest: give less slack/);
    expect(() => simulate(flapping(4))).not.toThrow();
  });

  test('a bait is drawn in just so far that friction holds it: H = μ (W − V)', () => {
    const far = { ...CAST, start: { bait_x_m: 45, slack_m: 0 } };
    const setup = parseScenario(far);
    const run = new Run(setup, tipPathOf(setup, setup.move));
    const { x, z } = run.nodes;
    const n = x.length - 1;
    const { weightInWater_N } = baitOf(setup, waterAt(15));
    const angle = Math.atan2(z[n - 1] - z[n], x[n] - x[n - 1]);
    const pull_N = run.record.trace.bait_tension_N[0];
    const limit_N = setup.bottom.friction * (weightInWater_N - pull_N * Math.sin(angle));
    // The place is found to 0.01 mm of some 100 mm: the pull to a part in a thousand or two.
    expect(Math.abs((pull_N * Math.cos(angle)) / limit_N - 1)).toBeLessThan(0.005);
  });
});

// One of each kind of bottom and of each line; npm run check:rest takes two hundred.
test.each(Array.from({ length: 10 }, (_, i) => waitCase(i)))(
  'waiting a minute changes nothing: $name',
  (one) => {
    const difference = differenceOf(one);
    expect(isWithin(difference), JSON.stringify(difference)).toBe(true);
  }
);
