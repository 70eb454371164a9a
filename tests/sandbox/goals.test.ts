import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
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

  test('a limit is said as an order, from the deck all of them, and a speed is nothing on the ruler of ways', () => {
    const target = { travel_m: [0.51, 0.69], speed_m_s: [0, 0.4] } as const;
    const of = (one: DrawnGoal, units: Units, isFromDeck = false) =>
      limitsAsked({ target: one, units, isFromDeck });
    expect(of(target, 'imperial')).toBe(tied('Stay under 1.3~ft/s'));
    expect(of({ speed_m_s: [0.06, 0.3] }, 'metric')).toBe(tied('Stay at 0.06~m/s to 0.3~m/s'));
    expect(of({}, 'metric')).toBeNull();
    const onBottom = { ...target, isOnBottom: true } as const;
    expect(of(onBottom, 'imperial')).toBe(tied('Stay under 1.3~ft/s'));
    expect(of(onBottom, 'imperial', true)).toBe(tied('Stay on bottom, under 1.3~ft/s'));
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
});
