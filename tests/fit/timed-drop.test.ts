import { describe, expect, test } from 'vitest';
import { dragAreaOf, fallTime_s, fit, lineFallTime_s, parseSession } from '../../src/lib/fit';
import {
  OUNCE_KG,
  Run,
  seededRandom,
  tipPathOf,
  parseSetup,
  type SetupInput
} from '../../src/lib/model';
import { NOMINAL } from './sessions';

const jig = (drag_area_m2: number) => ({
  ...NOMINAL,
  bait: { mass_kg: 0.5 * OUNCE_KG, drag_area_m2 }
});

/** From the splash to the bottom in the model itself, on a line too thin to hold it back, or another. */
function modelFall_s(
  drag_area_m2: number,
  depth_m: number,
  line: SetupInput['line'] = THIN
): number {
  const setup = parseSetup({
    ...jig(drag_area_m2),
    water: { depth_m },
    line,
    start: { bait_x_m: 2, line: 'splash', spool: 'free', slack_m: 0.2 }
  });
  const still = { kind: 'lift', from_deg: 60, to_deg: 60, duration_s: 0.1 } as const;
  const run = new Run(setup, tipPathOf(setup, still));
  while (!run.isTouching && run.time_s < 30) run.tick();
  return run.time_s;
}

const THIN = { material: 'fluorocarbon', diameter_m: 2e-5 } as const;
const lines: Record<string, SetupInput['line']> = {
  '12 lb fluorocarbon': { material: 'fluorocarbon', diameter_m: 2.8e-4 },
  '20 lb mono': { material: 'nylon', diameter_m: 4.6e-4 }
};

describe('the time of a fall', () => {
  test.each([
    ['12 lb fluorocarbon', 6e-4, 6],
    ['20 lb mono', 6e-4, 9],
    ['20 lb mono', 1e-3, 5]
  ] as const)('with %s behind it is the model’s own', (name, area_m2, depth_m) => {
    const line = lines[name];
    const setup = { ...jig(area_m2), line };
    const model_s = modelFall_s(area_m2, depth_m, line);
    const alone_s = fallTime_s(setup, area_m2, depth_m);
    const line_s = lineFallTime_s(setup, area_m2, depth_m);
    // The model's jig falls beside the rod and not quite straight, its line with a bow in it.
    expect(Math.abs(line_s / model_s - 1)).toBeLessThan(0.03);
    expect(Math.abs(line_s - model_s)).toBeLessThan(Math.abs(alone_s - model_s));
  });

  test('on a line without drag or weight is that of the jig alone', () => {
    const still = { ...THIN, density_kg_m3: 999, tangential_drag: 0 };
    const setup = { ...jig(6e-4), line: still };
    // A hundredth of a second is its step.
    expect(lineFallTime_s(setup, 6e-4, 4)).toBeCloseTo(fallTime_s(setup, 6e-4, 4), 2);
  });

  test.each([
    [4e-4, 3],
    [9e-4, 2]
  ])('of a drag area of %f m² over %f m is the model’s own', (area_m2, depth_m) => {
    // The model's line still has a little drag, and its tick is 10 ms: 2 % of some four seconds.
    const model_s = modelFall_s(area_m2, depth_m);
    expect(Math.abs(fallTime_s(jig(area_m2), area_m2, depth_m) / model_s - 1)).toBeLessThan(0.02);
  });

  test('without much drag is that of a stone with the water it takes along', () => {
    // 1 mm²: d = ½ (W/m) t², with W/m = g·0.912/(1 + 0.5·0.088) for lead in water at 15 °C.
    const accelerates_m_s2 = (9.80665 * 0.9119) / (1 + 0.5 * 0.0881);
    const seconds = fallTime_s(jig(1e-6), 1e-6, 0.3);
    expect(seconds).toBeCloseTo(Math.sqrt((2 * 0.3) / accelerates_m_s2), 3);
  });
});

describe('a jig timed as it falls', () => {
  const drop = (times_s: number[], distance_m = 3) => {
    return { distance_m, times_s, temperature_C: 15, has_line: false };
  };

  test('has the drag area that falls so long, more of it the longer', () => {
    const times = [3e-4, 6e-4, 1.2e-3].map((area) => fallTime_s(jig(area), area, 3));
    const areas = times.map((time) => dragAreaOf(jig(6e-4), [drop([time, time, time, time])]));
    expect(areas.map(({ estimate }) => estimate)).toEqual(
      [...areas.map(({ estimate }) => estimate)].sort((a, b) => a - b)
    );
    // The prior draws it towards the usual by a few hundredths.
    expect(areas[0].estimate / 3e-4).toBeCloseTo(1, 0);
    expect(areas[2].estimate / 1.2e-3).toBeCloseTo(1, 0);
  });

  test('is known the better the longer the fall and the more often it is timed', () => {
    const width = (distance_m: number, count: number) => {
      const time = fallTime_s(jig(6e-4), 6e-4, distance_m);
      const times = Array.from({ length: count }, () => time);
      const { interval90 } = dragAreaOf(jig(6e-4), [drop(times, distance_m)]);
      return interval90[1] / interval90[0];
    };
    expect(width(3, 4)).toBeLessThan(width(3, 1));
    expect(width(3, 1)).toBeLessThan(width(0.4, 1));
    // A tub with one drop still says something: the prior alone is a factor of four.
    expect(width(0.4, 1)).toBeLessThan(4);
  });

  test('has its true drag area in its interval nine times in ten', () => {
    const random = seededRandom(3);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const held = Array.from({ length: 300 }, () => {
      const area = 6e-4 * Math.exp(0.42 * normal());
      const always_s = 0.04 * normal();
      const time = fallTime_s(jig(area), area, 2.5);
      const times = Array.from({ length: 3 }, () => time + always_s + 0.1 * normal());
      const [least, most] = dragAreaOf(jig(6e-4), [drop(times, 2.5)]).interval90;
      return area >= least && area <= most;
    });
    // Binomial, 300 at 0.9: one deviation is 1.7 %; three of them.
    expect(Math.abs(held.filter(Boolean).length / 300 - 0.9)).toBeLessThan(0.052);
  });

  test('in two depths counts together, and either with its own line', () => {
    const setup = { ...jig(6e-4), line: lines['20 lb mono'] };
    const deep = { ...drop([lineFallTime_s(setup, 9e-4, 8)], 8), has_line: true };
    const tub = drop([fallTime_s(setup, 9e-4, 1)], 1);
    const width = (drops: Parameters<typeof dragAreaOf>[1]) => {
      const { interval90 } = dragAreaOf(setup, drops);
      return interval90[1] / interval90[0];
    };
    expect(width([deep, tub])).toBeLessThan(Math.min(width([deep]), width([tub])));
    // One thumb on eight metres: a few hundredths.
    expect(dragAreaOf(setup, [deep, tub]).estimate / 9e-4).toBeCloseTo(1, 1);
    expect(() => dragAreaOf(setup, [])).toThrow('drops must not be empty');
  });

  test('tells its drag area before any move is tested', () => {
    const time = fallTime_s(jig(1e-3), 1e-3, 3);
    const session = {
      gear: NOMINAL,
      tests: [
        {
          move: { kind: 'sweep', from_deg: 0, to_deg: 30, duration_s: 2 },
          travel_m: 0.3
        }
      ],
      drop: drop([time, time, time, time])
    };
    const told = fit(parseSession(session)).unknowns.drag_area_m2;
    const untold = fit(parseSession({ ...session, drop: undefined })).unknowns.drag_area_m2;
    expect(told?.told).toBe(true);
    expect(untold?.told).toBe(false);
    expect(told?.estimate).toBeGreaterThan(0.85e-3);
    expect(told?.estimate).toBeLessThan(1.15e-3);
  });
});
