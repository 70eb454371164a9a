import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/lib/model';
import { hopsSoFar } from '../../src/lib/sandbox/draw/goals';
import { stageOf } from '../../src/lib/sandbox/stage';
import { drawnOf } from '../../src/lib/scoring';
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
    expect(hopsSoFar(trace, between, stage)).toBe(1);
    expect(hopsSoFar(trace, trace.t_s.length, stage)).toBe(2);
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
    ).toEqual({ travel_m: [0.25, 0.35], hops: 2, height_m: [0.1, 0.3], speed_m_s: [0, 0.4] });
  });
});
