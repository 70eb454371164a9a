import type { Bait } from '../../src/lib/model/bait';
import { GROUND, type Bottom } from '../../src/lib/model/bottom';
import { lineOfPieces, material, type Line } from '../../src/lib/model/line';
import { LineSolver } from '../../src/lib/model/line-solver';
import { LineState } from '../../src/lib/model/line-state';
import { GRAVITY_M_S2, type Point } from '../../src/lib/model';
import { waterAt } from '../../src/lib/model/water';

/** The solver by itself, set up as a laboratory would: no cast, no rod, any bottom. */

export const WATER_15C = waterAt(15);

export interface LineOptions {
  segments: number;
  diameter_m: number;
  density_kg_m3: number;
  youngs_modulus_Pa: number;
  normal_drag?: number | 'reynolds';
  tangential_drag?: number;
}

export function lineWith(options: LineOptions): Line {
  const piece = material({ normal_drag: 0, tangential_drag: 0, ...options }, WATER_15C);
  return lineOfPieces(options.segments, () => piece);
}

/** A line that is as good as absent: for bodies that fall or slide by themselves. */
export const NO_LINE: LineOptions = {
  segments: 4,
  diameter_m: 2e-6,
  density_kg_m3: WATER_15C.density_kg_m3,
  youngs_modulus_Pa: 1e9
};

export interface BaitOptions {
  mass_kg: number;
  weightInWater_N: number;
  dragArea_m2?: number;
  addedMass_kg?: number;
}

export function baitWith(options: BaitOptions): Bait {
  return {
    mass_kg: options.mass_kg,
    movingMass_kg: options.mass_kg + (options.addedMass_kg ?? 0),
    weightInAir_N: options.mass_kg * GRAVITY_M_S2,
    weightInWater_N: options.weightInWater_N,
    drag: 0.5 * WATER_15C.density_kg_m3 * (options.dragArea_m2 ?? 0),
    liftToDrag: 0,
    radius_m: 0.005
  };
}

/** A plane through `through` that rises by `slope_deg` with x; the line never meets it. */
export function planeUnderBait(through: Point, friction: number, slope_deg = 0): Bottom {
  const slope = (slope_deg * Math.PI) / 180;
  const nx = -Math.sin(slope);
  const nz = Math.cos(slope);
  return {
    isFlat: slope_deg === 0,
    friction,
    breakout_N: 0,
    plough_N: 0,
    stones: 0,
    highest_m: -Infinity,
    heightAt: () => -Infinity,
    bedAt: () => -Infinity,
    evenedBedAt: () => -Infinity,
    evenedSlopeAt: () => 0,
    contactsNear: (x, z, out) => {
      const gap_m = (x - through.x) * nx + (z - through.z) * nz;
      out[0] = { nx, nz, gap_m, stone: GROUND };
      out.length = 1;
    }
  };
}

export const NO_BOTTOM: Bottom = planeUnderBait({ x: 0, z: -1e6 }, 0);

export interface Rig {
  solver: LineSolver;
  state: LineState;
  bait(): { x: number; z: number; vx: number; vz: number };
}

/** A straight line from `tip` to `bait` of the given unstretched length, at rest. */
export function rigOf(
  line: Line,
  bait: Bait,
  bottom: Bottom,
  tip: Point,
  baitAt: Point,
  unstretched_m: number,
  isTouching = true,
  wind_m_s = 0
): Rig {
  const n = line.segments;
  const share = Float64Array.from({ length: n + 1 }, (_, i) => i / n);
  const state = LineState.atRest(
    {
      x_m: share.map((s) => tip.x + s * (baitAt.x - tip.x)),
      z_m: share.map((s) => tip.z + s * (baitAt.z - tip.z))
    },
    tip
  );
  state.isTouching = isTouching;
  const solver = new LineSolver(state, line, bait, bottom, null, unstretched_m / n, wind_m_s);
  return {
    solver,
    state,
    bait: () => ({ x: state.x[n], z: state.z[n], vx: state.vx[n], vz: state.vz[n] })
  };
}

/** Steps on for `duration_s` with the tip held where it is. */
export function holdFor(rig: Rig, duration_s: number, step_s: number): void {
  const tip = { ...rig.state.tip };
  const steps = Math.round(duration_s / step_s);
  for (let i = 0; i < steps; i++) rig.solver.step(step_s, tip);
}
