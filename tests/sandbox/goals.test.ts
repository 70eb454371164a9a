import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { hatchStones } from '../../src/lib/sandbox/draw/texture';
import { hopsSoFar } from '../../src/lib/sandbox/draw/goals';
import { lineArcOf } from '../../src/lib/sandbox/draw/line';
import { closeUpExtentOf, stageOf } from '../../src/lib/sandbox/stage';
import { limitsAsked } from '../../src/lib/sandbox/readout';
import { drawnOf, type DrawnGoal, type Units } from '../../src/lib/scoring';
import { tied } from '../tied';
import { smallWater } from './waters';

describe('goals in the picture', () => {
  test('of two hops, one is counted when the first is over and two at the end, as the model does', () => {
    const setup = smallWater();
    const up = { kind: 'lift', from_deg: 0, to_deg: 45, duration_s: 0.4 } as const;
    const down = { ...up, from_deg: 45, to_deg: 0, duration_s: 1 } as const;
    const reel = { kind: 'reel', line_m: 1.2, duration_s: 2 } as const;
    const moves = [up, down, reel, up, down];
    const { trace, hops } = simulate({ ...setup, move: { kind: 'sequence', moves }, hold_s: 3 });
    const start = { elevation_deg: 0, azimuth_deg: 0 };
    const stage = stageOf({
      setup,
      plane: 'lift',
      start,
      units: 'metric',
      target: null,
      ghosts: []
    });
    expect(hops.length).toBe(2);
    const between = trace.t_s.findIndex((t) => t > hops[0].t_s + hops[0].duration_s + 0.2);
    expect(hopsSoFar({ trace, ticks: between }, stage)).toBe(1);
    expect(hopsSoFar({ trace, ticks: trace.t_s.length }, stage)).toBe(2);
  });

  test('hops too low to count are counted neither by the pips nor by the words', () => {
    const setup = smallWater();
    const up = (to_deg: number) =>
      ({ kind: 'lift', from_deg: 0, to_deg, duration_s: 0.4 }) as const;
    const down = (from_deg: number) =>
      ({ kind: 'lift', from_deg, to_deg: 0, duration_s: 1 }) as const;
    const reel = { kind: 'reel', line_m: 1.2, duration_s: 2 } as const;
    const moves = [up(45), down(45), reel, up(45), down(45)];
    const run = simulate({ ...setup, move: { kind: 'sequence', moves }, hold_s: 3 });
    const heights = run.hops.map(({ height_m }) => height_m).sort((a, b) => b - a);
    expect(heights.length).toBe(2);
    const [high_m, low_m] = heights;
    // So that the lower one is a little less than half of what is asked.
    const goal = { kind: 'hops', count: 1, height_m: [2.1 * low_m, 3 * high_m] } as const;
    expect(high_m).toBeGreaterThan(1.05 * low_m);
    const stage = stageOf({
      setup,
      plane: 'lift',
      start: { elevation_deg: 0, azimuth_deg: 0 },
      units: 'metric',
      target: drawnOf([goal as unknown as Parameters<typeof drawnOf>[0][0]]),
      ghosts: []
    });
    expect(hopsSoFar({ trace: run.trace, ticks: run.trace.t_s.length }, stage)).toBe(1);
  });

  test('a limit is said as an order, from the deck all of them, and a speed is nothing on the ruler of ways', () => {
    const target = { travel_m: [0.51, 0.69], speed_m_s: [0, 0.4] } as const;
    const of = (one: DrawnGoal, units: Units, isFromDeck = false) =>
      limitsAsked({ target: one, units, isFromDeck });
    expect(of(target, 'imperial')).toBe(tied('Stay slower than 1~ft in 0.8~s'));
    expect(of({ speed_m_s: [0.06, 0.3] }, 'metric')).toBe(tied('Take 1 to 5~s for each 30~cm'));
    expect(of({ speed_m_s: [0.03, 0.22] }, 'imperial')).toBe(
      tied('Take 1.4 to 10~s for each foot')
    );
    expect(of({}, 'metric')).toBeNull();
    const onBottom = { ...target, isOnBottom: true } as const;
    expect(of(onBottom, 'imperial')).toBe(tied('Stay slower than 1~ft in 0.8~s'));
    expect(of(onBottom, 'imperial', true)).toBe(tied('Stay on bottom, slower than 1~ft in 0.8~s'));
    expect(of({ isOnBottom: true }, 'metric', true)).toBe('Stay on bottom');
    const start = { elevation_deg: 0, azimuth_deg: 0 };
    const props = {
      setup: smallWater(),
      plane: 'sweep',
      start,
      units: 'metric',
      ghosts: []
    } as const;
    const reach = (one: DrawnGoal) => closeUpExtentOf(stageOf({ ...props, target: one }));
    expect(reach({ ...target, speed_m_s: [0, 4] })).toEqual(reach(target));
  });

  test('a slack line seen from above lies aside, a tight one straight', () => {
    const pose = (z: number[]) => ({ x: Float64Array.of(0, 5, 10), z: Float64Array.from(z) });
    expect(lineArcOf(pose([0, 0, 0]))).toBe(0);
    // An arc of 10.4 over 10.
    const slack = Math.sqrt(5.2 ** 2 - 5 ** 2);
    expect(lineArcOf(pose([0, -slack, 0]))).toBeCloseTo(Math.sqrt(0.375 * 10 * 0.4), 5);
  });

  test('every goal that has a place shows it, and the first of two alike is drawn', () => {
    expect(
      drawnOf([
        { kind: 'travel', target_m: 0.3, band_m: 0.05 },
        { kind: 'hops', count: 2, height_m: [0.1, 0.3] },
        { kind: 'peak_height', most_m: 0.5 },
        { kind: 'speed', most_m_s: 0.4 },
        { kind: 'contact', least: 0.9 }
      ] as Parameters<typeof drawnOf>[0])
    ).toEqual({
      travel_m: [0.25, 0.35],
      hops: 2,
      height_m: [0.1, 0.3],
      speed_m_s: [0, 0.4],
      isOnBottom: true
    });
  });

  test('each rock is drawn from its top to the ground, those that touch another too', () => {
    const heights_m = [0.04, 0.06, 0.03];
    const stones = [
      { x_m: 8.9, width_m: 0.24, height_m: heights_m[0] },
      { x_m: 8.6, width_m: 0.3, height_m: heights_m[1] },
      // Its right side lies on the one before.
      { x_m: 8.37, width_m: 0.2, height_m: heights_m[2] }
    ];
    const heightAt = (x_m: number) =>
      Math.max(
        0,
        ...stones.map(({ x_m: at, width_m, height_m }) =>
          Math.abs(x_m - at) < width_m / 2 - 1e-6 ? height_m : 0
        )
      );
    const drawn: number[] = [];
    const context = new Proxy({} as CanvasRenderingContext2D, {
      get: (_, name) =>
        name === 'rect' ? (...at: number[]) => drawn.push(at[3]) : () => undefined,
      set: () => true
    });
    const view = { width: 400, height: 200, scale: 100, x0: 900, y0: 150 };
    hatchStones(context, view, stones, heightAt, { colour: '', lean: 1 });
    // A pixel above its top is within.
    expect(drawn.map((px) => Math.round(px))).toEqual(
      heights_m.map((m) => Math.round(100 * m) + 1)
    );
  });
});
