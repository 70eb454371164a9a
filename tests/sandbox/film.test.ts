import { describe, expect, test } from 'vitest';
import {
  recordScenario,
  simulate,
  tipOf,
  tipPathOf,
  type Move,
  type RodAngles
} from '../../src/lib/model';
import { filmOf, poseFor, showAt } from '../../src/lib/sandbox/film';
import { planeOf } from '../../src/lib/sandbox/rod-angles';
import { smallWater } from './waters';

const LIFT: Move = { kind: 'lift', from_deg: 5, to_deg: 40, duration_s: 0.6 };
const HOPS: Move = {
  kind: 'sequence',
  moves: [
    { kind: 'lift', from_deg: 20, to_deg: 35, duration_s: 0.3 },
    { kind: 'pause', duration_s: 0.5 },
    { kind: 'lift', from_deg: 35, to_deg: 50, duration_s: 0.3 }
  ]
};

describe('a film', () => {
  test('shows the run that simulate computes', () => {
    const film = filmOf(recordScenario({ ...smallWater(), move: LIFT, hold_s: 2 }));
    expect(film.result).toEqual(simulate({ ...smallWater(), move: LIFT, hold_s: 2 }));
  });

  test('has tip and bait where the trace has them, at a tick and between two', () => {
    const film = filmOf(recordScenario({ ...smallWater(), move: LIFT, hold_s: 2 }));
    const pose = poseFor(film);
    const { trace } = film.result;
    const last = pose.x.length - 1;
    showAt(film, 0.4, pose);
    // The film keeps 32 bits: seven digits of metres.
    expect(pose.x[0]).toBeCloseTo(trace.tip_x_m[40], 5);
    expect(pose.z[last]).toBeCloseTo(trace.bait_z_m[40], 5);
    showAt(film, 0.4025, pose);
    expect(pose.x[last]).toBeCloseTo(0.75 * trace.bait_x_m[40] + 0.25 * trace.bait_x_m[41], 5);
  });

  test('ends when everything rests, and stays on its last picture after that', () => {
    const film = filmOf(recordScenario({ ...smallWater(), move: LIFT, hold_s: 30 }));
    expect(film.ends_s).toBeGreaterThan(1);
    expect(film.ends_s).toBeLessThan(15);
    const pose = poseFor(film);
    showAt(film, 1e6, pose);
    expect(pose.x[pose.x.length - 1]).toBeCloseTo(film.result.trace.bait_x_m.at(-1) as number, 5);
  });
});

describe('the rod', () => {
  const water = smallWater();
  const rodAnglesAt = (setup: typeof water, move: Move, t_s: number): RodAngles => {
    const angles = { elevation_deg: NaN, azimuth_deg: NaN };
    tipPathOf(setup, move).anglesAt(t_s, angles);
    return angles;
  };
  test.each([
    ['before a lift', LIFT, 0, 5],
    ['halfway through it', LIFT, 0.3, 22.5],
    ['after it', LIFT, 9, 40],
    ['in the pause between two hops', HOPS, 0.6, 35],
    ['in the second hop', HOPS, 0.95, 42.5],
    ['after both', HOPS, 9, 50]
  ])('%s stands as the move says', (_name, move, t_s, deg) => {
    expect(rodAnglesAt(water, move, t_s)).toEqual({
      elevation_deg: expect.closeTo(deg, 9),
      azimuth_deg: 0
    });
  });

  test('of a sweep turns sideways at its elevation', () => {
    const sweep: Move = {
      kind: 'sweep',
      from_deg: 10,
      to_deg: 50,
      duration_s: 1,
      elevation_deg: 8
    };
    expect(rodAnglesAt(water, sweep, 0.5)).toEqual({
      elevation_deg: 8,
      azimuth_deg: expect.closeTo(30, 9)
    });
  });

  test('of a tip path points at the tip, from a boat that drifts too: boat and tip go together', () => {
    const drifting = { ...water, drift_m_s: 0.5 };
    const path: Move = { kind: 'tip_path', t_s: [0, 1], x_m: [1.7, 1.7], z_m: [1.25, 2.95] };
    expect(rodAnglesAt(water, path, 1).elevation_deg).toBeCloseTo(45, 6);
    expect(rodAnglesAt(drifting, path, 1).elevation_deg).toBeCloseTo(45, 6);
  });

  test('of a recording is drawn where the model has its tip, between samples too', () => {
    const input = {
      kind: 'rod_input',
      rate_Hz: 100,
      elevation_deg: [0, 2, 6],
      azimuth_deg: 0
    } as const;
    const move: Move = { ...input, elevation_deg: [...input.elevation_deg] };
    // The quadratic spline with 0, 2 and 6 for control points, half way over its middle piece:
    // (0 + 6 · 2 + 6) / 8 (de Boor, A Practical Guide to Splines, 1978).
    const { elevation_deg } = rodAnglesAt(water, move, 0.015);
    expect(elevation_deg).toBeCloseTo(2.25, 9);
    const [asDrawn, asRun] = [
      { x: 0, z: 0 },
      { x: 0, z: 0 }
    ];
    tipOf(water, elevation_deg, 0, asDrawn);
    tipPathOf(water, move).at(0.015, asRun);
    expect(asDrawn).toEqual(asRun);
    expect(move.kind === 'rod_input' && planeOf(move)).toBe('lift');
  });
});
