import { describe, expect, test } from 'vitest';
import { parseScenario, Run, simulate, tipPathOf, type ScenarioInput } from '../../src/lib/model';

/** A light jig close to the boat on thick mono, the rod high: what wind and drift do most to. */
const CAST: ScenarioInput = {
  water: { depth_m: 3 },
  line: { material: 'nylon', diameter_m: 0.00038 },
  bait: { mass_kg: 0.0071 },
  start: { bait_x_m: 6, slack_m: 0.1 },
  move: { kind: 'lift', from_deg: 75, to_deg: 75, duration_s: 1 },
  hold_s: 8
};
const runOf = (change: Partial<ScenarioInput>): Run => {
  const setup = parseScenario({ ...CAST, ...change });
  return new Run(setup, tipPathOf(setup, setup.move));
};

/** Furthest that the dry line bows from the straight between its ends, m, positive away from the angler. */
function bowOf({ nodes: { x, z } }: Run): number {
  const last = x.findIndex((_, i) => z[i + 1] <= 0);
  const [cx, cz] = [x[last] - x[0], z[last] - z[0]];
  const off = Array.from(
    x.slice(0, last + 1),
    (xi, i) => ((xi - x[0]) * -cz + (z[i] - z[0]) * cx) / Math.hypot(cx, cz)
  );
  return off.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
}

/** Level pull on the tip less level pull on the bait, N. */
function levelPullTaken(run: Run): number {
  const { x, z } = run.nodes;
  const n = x.length - 1;
  const cosine = (i: number) => (x[i + 1] - x[i]) / Math.hypot(x[i + 1] - x[i], z[i + 1] - z[i]);
  const { tip_tension_N, bait_tension_N } = run.record.trace;
  return tip_tension_N[0] * cosine(0) - bait_tension_N[0] * cosine(n - 1);
}

describe('wind on the dry line', () => {
  test.each([
    [8, 1],
    [-8, -1]
  ])('of %d m/s bows it by feet, downwind', (wind_m_s, side) => {
    const still = bowOf(runOf({}));
    expect(side * (bowOf(runOf({ wind_m_s })) - still)).toBeGreaterThan(0.3);
  });

  test.each([4, 8, 12])(
    'of %d m/s takes up less level pull than a wall as high as the tip and as wide as the line',
    (wind_m_s) => {
      const run = runOf({ wind_m_s });
      // Newton: at rest the air alone stands between the level pulls of tip and bait, still water bears
      // none. ½ρ Cd d w² across an upright line (ISO 2533; cylinder, Re 100–1000) is the most it can be.
      const most_N = 0.5 * 1.225 * 1.15 * 0.00038 * wind_m_s ** 2 * run.nodes.z[0];
      const taken_N = levelPullTaken(run);
      // Line on the bottom holds by friction: a fiftieth of it is let pass.
      expect(taken_N).toBeLessThan(1.02 * most_N);
      expect(taken_N).toBeGreaterThan(0.2 * most_N);
    }
  );

  test('draws a light jig in, the harder it blows, and says by how much', () => {
    const drawn = [0, 8, 12].map((wind_m_s) => {
      const [first] = runOf({ wind_m_s }).record.events;
      return first?.kind === 'pulled in' ? first.by_m : 0;
    });
    expect(drawn[0]).toBe(0);
    expect(drawn[1]).toBeGreaterThan(0.1);
    expect(drawn[2]).toBeGreaterThan(2 * drawn[1]);
  });

  test('does not start a line moving that was laid in it', () => {
    const { tip_tension_N } = simulate({ ...CAST, wind_m_s: 6 }).trace;
    for (const pull of tip_tension_N) {
      expect(Math.abs(pull / tip_tension_N[0] - 1)).toBeLessThan(0.01);
    }
  });
});

describe('a boat that drifts', () => {
  const drifted = (drift_m_s: number) => {
    const run = runOf({ drift_m_s });
    const before = bowOf(run);
    while (run.time_s < 9) run.tick();
    return { before, after: bowOf(run), travel_m: run.result().travel_m };
  };

  test('stays where it is without drift, and so does the jig', () => {
    expect(drifted(0).travel_m).toBe(0);
  });

  test('off the jig draws the line straight and drags the jig, no further than it goes itself', () => {
    const { before, after, travel_m } = drifted(-0.3);
    expect(Math.abs(after)).toBeLessThan(Math.abs(before) / 3);
    // The boat goes 2.7 m; what is not the jig's is sag taken up, here under a foot.
    expect(travel_m).toBeLessThan(2.7);
    expect(travel_m).toBeGreaterThan(2.4);
  });

  test('onto the jig leaves it where it lies, on a line that goes slack and bellies out', () => {
    const { before, after, travel_m } = drifted(0.3);
    expect(travel_m).toBe(0);
    expect(Math.abs(after - before)).toBeGreaterThan(0.2);
  });
});
