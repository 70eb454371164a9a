import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { grain } from '../../src/lib/sandbox/draw/texture';
import { blendPoses, newPose } from '../../src/lib/sandbox/pose';
import { closeUpExtentOf, stageOf, widen } from '../../src/lib/sandbox/stage';
import { smallWater } from './waters';

const base = {
  setup: smallWater(),
  plane: 'lift',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  units: 'metric',
  target: null,
  ghosts: []
} as const;

describe('a stage', () => {
  test('has the model’s own bottom, stones and all', () => {
    const stones = [{ x_m: 13, width_m: 0.4, height_m: 0.12 }];
    const stage = stageOf({ ...base, setup: smallWater({ bottom: { stones } }) });
    expect(stage.heightAt(12)).toBe(-3.1);
    expect(stage.heightAt(13)).toBeCloseTo(-2.98, 9);
    expect(stage.bait).toEqual({ x_m: 14.2, z_m: -3.1 });
  });

  test('holds a rock that the bait comes to up to its top, and none that lies beyond', () => {
    const at = (x_m: number) => {
      const stones = [{ x_m, width_m: 0.16, height_m: 0.4 }];
      return closeUpExtentOf(stageOf({ ...base, setup: smallWater({ bottom: { stones } }) }));
    };
    expect(at(13.9).most_height_m).toBeCloseTo(0.4, 9);
    expect(at(12).most_height_m).toBe(0.14);
    expect(at(14.6).most_height_m).toBe(0.14);
  });

  test('reaches to its target and to the tries before', () => {
    const { trace } = simulate({
      ...base.setup,
      move: { kind: 'lift', from_deg: 0, to_deg: 60, duration_s: 0.5 },
      hold_s: 2
    });
    const aimed = stageOf({ ...base, target: { travel_m: [0.8, 1] } });
    expect(closeUpExtentOf(aimed).most_travel_m).toBeCloseTo(1, 12);
    const reach = closeUpExtentOf(stageOf({ ...base, ghosts: [trace] }));
    expect(reach.most_travel_m).toBeCloseTo(14.2 - Math.min(...trace.bait_x_m), 9);
    expect(reach.most_height_m).toBeCloseTo(Math.max(...trace.bait_z_m) + 3.1, 9);
    const again = { ...reach };
    widen(again, aimed, trace, 0, trace.t_s.length);
    expect(again).toEqual(reach);
  });
});

test('a try is drawn to the scale of its goal, whatever came of those before; without a goal to theirs', () => {
  const { trace } = simulate({
    ...base.setup,
    move: { kind: 'sweep', from_deg: 0, to_deg: 90, duration_s: 2 },
    hold_s: 2
  });
  const target = { travel_m: [0.55, 0.67] } as const;
  const alone = closeUpExtentOf(stageOf({ ...base, target }));
  const far = closeUpExtentOf(stageOf({ ...base, ghosts: [trace] }));
  expect(far.most_travel_m).toBeGreaterThan(2 * alone.most_travel_m);
  expect(closeUpExtentOf(stageOf({ ...base, target, ghosts: [trace] }))).toEqual(alone);
  const lifted = { height_m: [0.1, 0.2] } as const;
  const high = closeUpExtentOf(stageOf({ ...base, target: lifted, ghosts: [trace] }));
  expect(high.most_travel_m).toBe(far.most_travel_m);
});

test('between two ticks everything lies between', () => {
  const [a, b, out] = [newPose(2), newPose(2), newPose(2)];
  Object.assign(a, { t_s: 1, elevation_deg: 10 });
  Object.assign(b, { t_s: 1.01, elevation_deg: 14 });
  a.x.set([1, 5]);
  b.x.set([3, 5.5]);
  blendPoses(a, b, 0.25, out);
  expect(out).toMatchObject({ t_s: 1.0025, elevation_deg: 11 });
  expect([...out.x]).toEqual([1.5, 5.125]);
});

test('the grain of a texture lies still and is spread evenly', () => {
  const grains = Array.from({ length: 4000 }, (_, i) => grain(i % 80, Math.floor(i / 80)));
  expect(grain(3, -7)).toBe(grain(3, -7));
  expect(Math.min(...grains)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...grains)).toBeLessThan(1);
  const mean = grains.reduce((sum, g) => sum + g, 0) / grains.length;
  // Standard error of the mean of 4000 even numbers is 0.0046; five of them.
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.023);
});
