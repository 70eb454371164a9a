import { solveLinear } from '../linear';

/** The tip held over a mark on the floor, and where the camera saw it. */
export interface SweepPose {
  /** From the bait's direction. */
  readonly azimuth_deg: number;
  /** Across the picture. */
  readonly u_px: number;
}

/** A camera low beside the sweep: u = u₀ + F sin a / (ρ − cos a), a from the camera's own direction. */
interface SweepCamera {
  readonly u0_px: number;
  /** Focal length, below 0 for a camera on the left. */
  readonly focal_px: number;
  /** From the hand, in reaches of the rod. */
  readonly rho: number;
  /** Where it stands, from the bait's direction. */
  readonly bearing_deg: number;
}

/** Degrees, and how wrong they may be where it counts. */
export interface RodView {
  /** Where the rod points, degrees; null where the camera cannot tell. */
  readonly angleAt: (reading: number) => number | null;
  /** By how much what the tip comes nearer between two angles may be off, nine times in ten, m. */
  readonly wayOff_m: (from_deg: number, to_deg: number, reach_m: number) => number;
}

export type ViewFault = 'fold' | 'yaw' | 'poses';

/** A tip is brought over a mark to about this, degrees: 3½ cm at two metres. */
const POSE_SD_DEG = 1;
/** A camera is put at 45° by eye, degrees (sd). */
const BEARING_DEG = 45;
const BEARING_SD_DEG = 5;
/** What a pose may be off the fitted camera, degrees (rms), before the marks are not believed. */
const WORST_FIT_DEG = 3;
/** Nearer to the fold, where the tip turns back in the picture, an angle is not told, degrees. */
const FOLD_MARGIN_DEG = 6;
/** The rod's ends that must be seen, from the bait's direction. */
const SEEN_DEG = [0, 70];
const RAD = Math.PI / 180;

/** Fits the camera to poses, at least four of them apart. No distance is measured. */
export function sweepAngles(poses: readonly SweepPose[]): RodView | ViewFault {
  const camera = fitted(poses);
  if (!camera) return 'poses';
  if (turnsBack(poses)) return 'fold';
  const fold_deg = Math.acos(1 / camera.rho) / RAD - FOLD_MARGIN_DEG;
  const off = poses.map((pose) => offBy_deg(camera, pose));
  const rms = Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
  if (rms > WORST_FIT_DEG) return 'poses';
  if (SEEN_DEG.some((deg) => Math.abs(deg - camera.bearing_deg) > fold_deg)) return 'fold';
  const covariance = covarianceOf(camera, poses, off);
  return {
    angleAt: (u_px) => {
      const angle_deg = angleIn(camera, u_px);
      return Math.abs(angle_deg - camera.bearing_deg) < fold_deg ? angle_deg : null;
    },
    wayOff_m: (from_deg, to_deg, reach_m) =>
      studentT90(freedomOf(poses)) * waySd(camera, covariance, from_deg, to_deg, reach_m)
  };
}

/** Whether the tip, swept farther out, came back in the picture: it went over the fold. */
function turnsBack(poses: readonly SweepPose[]): boolean {
  const marks = [...new Set(poses.map(({ azimuth_deg }) => azimuth_deg))].sort((a, b) => a - b);
  const places = marks.map((deg) => {
    const there = poses.filter(({ azimuth_deg }) => azimuth_deg === deg);
    return there.reduce((sum, { u_px }) => sum + u_px, 0) / there.length;
  });
  const ways = places.slice(1).map((place, i) => Math.sign(place - places[i]));
  return ways.some((way) => way !== ways[0]);
}

function placeIn({ u0_px, focal_px, rho, bearing_deg }: SweepCamera, azimuth_deg: number): number {
  const a = (azimuth_deg - bearing_deg) * RAD;
  return u0_px + (focal_px * Math.sin(a)) / (rho - Math.cos(a));
}

/** The formula solved for a, on the near side of the fold; NaN beyond it. */
function angleIn({ u0_px, focal_px, rho, bearing_deg }: SweepCamera, u_px: number): number {
  const s = (u_px - u0_px) / focal_px;
  return bearing_deg + (Math.asin((s * rho) / Math.hypot(1, s)) - Math.atan(s)) / RAD;
}

/** Pixels a degree there. */
function rateIn(camera: SweepCamera, azimuth_deg: number): number {
  return placeIn(camera, azimuth_deg + 0.5) - placeIn(camera, azimuth_deg - 0.5);
}

function offBy_deg(camera: SweepCamera, { azimuth_deg, u_px }: SweepPose): number {
  return (u_px - placeIn(camera, azimuth_deg)) / rateIn(camera, azimuth_deg);
}

/** Coarse, then three times finer about the best: ρ and bearing by search, F and u₀ are linear. */
function fitted(poses: readonly SweepPose[]): SweepCamera | null {
  let best: { camera: SweepCamera; cost: number } | null = null;
  let [rho, bearing_deg] = [2.6, BEARING_DEG];
  for (let reach = 1; reach > 0.01; reach /= 3) {
    const about = [rho, bearing_deg];
    for (let i = -8; i <= 8; i++) {
      for (let k = -8; k <= 8; k++) {
        const camera = linearPart(
          poses,
          about[0] + (1.4 * reach * i) / 8,
          about[1] + 2 * reach * k
        );
        if (!camera) continue;
        const cost = costOf(camera, poses);
        if (!best || cost < best.cost) best = { camera, cost };
      }
    }
    if (!best) return null;
    ({ rho, bearing_deg } = best.camera);
  }
  return best?.camera ?? null;
}

function costOf(camera: SweepCamera, poses: readonly SweepPose[]): number {
  const bearing = (camera.bearing_deg - BEARING_DEG) / BEARING_SD_DEG;
  const off = poses.map((pose) => offBy_deg(camera, pose) / POSE_SD_DEG);
  return off.reduce((sum, one) => sum + one * one, bearing * bearing);
}

/** F and u₀ for this ρ and bearing, by least squares. */
function linearPart(
  poses: readonly SweepPose[],
  rho: number,
  bearing_deg: number
): SweepCamera | null {
  if (rho <= 1.2) return null;
  const s = poses.map(({ azimuth_deg }) =>
    placeIn({ u0_px: 0, focal_px: 1, rho, bearing_deg }, azimuth_deg)
  );
  const mean = s.reduce((sum, one) => sum + one, 0) / s.length;
  const meanU = poses.reduce((sum, { u_px }) => sum + u_px, 0) / s.length;
  const spread = s.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const cross = s.reduce((sum, one, i) => sum + (one - mean) * (poses[i].u_px - meanU), 0);
  const focal_px = cross / spread;
  return focal_px === 0 ? null : { rho, bearing_deg, focal_px, u0_px: meanU - focal_px * mean };
}

const PARTS = ['u0_px', 'focal_px', 'rho', 'bearing_deg'] as const;
/** A step that shows the slope of each, and is small beside what it is known to. */
const STEPS = { u0_px: 0.1, focal_px: 0.1, rho: 1e-3, bearing_deg: 0.01 } as const;

const nudged = (camera: SweepCamera, part: (typeof PARTS)[number]): SweepCamera => ({
  ...camera,
  [part]: camera[part] + STEPS[part]
});

/** So many usual poses' worth of weight the spread has: seven poses alone tell a spread to a third. */
const USUAL_POSES = 2;

const freedomOf = (poses: readonly SweepPose[]) =>
  Math.max(poses.length - PARTS.length, 0) + USUAL_POSES;

/**
 * Half the width that holds nine in ten of Student's distribution, in deviations that so many readings
 * told (Abramowitz & Stegun 26.7.5).
 */
function studentT90(freedom: number): number {
  const z = 1.6449;
  return (
    z + (z ** 3 + z) / (4 * freedom) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * freedom ** 2)
  );
}

/** (JᵀJ / σ²)⁻¹ with the prior of the bearing; σ from the poses' own spread and what is usual. */
function covarianceOf(
  camera: SweepCamera,
  poses: readonly SweepPose[],
  off: readonly number[]
): number[][] | null {
  const squares = off.reduce((sum, one) => sum + one * one, 0);
  const variance = (squares + USUAL_POSES * POSE_SD_DEG ** 2) / freedomOf(poses);
  const slopes = poses.map((pose) =>
    PARTS.map(
      (part) => (offBy_deg(nudged(camera, part), pose) - offBy_deg(camera, pose)) / STEPS[part]
    )
  );
  const normal = PARTS.map((_, i) =>
    PARTS.map((_, k) => slopes.reduce((sum, row) => sum + row[i] * row[k], 0) / variance)
  );
  normal[3][3] += 1 / BEARING_SD_DEG ** 2;
  const columns = PARTS.map((_, i) =>
    solveLinear(normal.map((row, k) => [...row, k === i ? 1 : 0]))
  );
  return columns.every((column) => column !== null) ? columns : null;
}

/** How much nearer a sweep brings the tip to a bait far off: reach × (1 − cos azimuth). */
function waySd(
  camera: SweepCamera,
  covariance: number[][] | null,
  from_deg: number,
  to_deg: number,
  reach_m: number
): number {
  if (!covariance) return Infinity;
  const way = (other: SweepCamera) => {
    const [from, to] = [from_deg, to_deg].map((deg) => angleIn(other, placeIn(camera, deg)) * RAD);
    return reach_m * (Math.cos(from) - Math.cos(to));
  };
  const slopes = PARTS.map((part) => (way(nudged(camera, part)) - way(camera)) / STEPS[part]);
  const variance = slopes.reduce(
    (sum, a, i) => slopes.reduce((inner, b, k) => inner + a * covariance[i][k] * b, sum),
    0
  );
  return Math.sqrt(Math.max(variance, 0));
}
