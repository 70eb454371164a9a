import type { Pixel } from '../frame';
import type { RodView, ViewFault } from './sweep-angles';

/** Two tapes on the rod, the outer nearer the tip, seen from the side. */
export interface TapePair {
  readonly outer: Pixel;
  readonly inner: Pixel;
}

/**
 * From the inner tape to the outer, degrees above level, as the picture has it. Past upright the outer tape
 * is on the other side: the way the rod points when level is kept.
 */
export function pairAngleFrom({ outer, inner }: TapePair, pointsRight: boolean): number {
  const right = (outer.x_px - inner.x_px) * (pointsRight ? 1 : -1);
  return Math.atan2(inner.y_px - outer.y_px, right) / RAD;
}

const spacing = ({ outer, inner }: TapePair) =>
  Math.hypot(outer.x_px - inner.x_px, outer.y_px - inner.y_px);

const RAD = Math.PI / 180;
/** A rod is held level or upright by eye to about this, degrees. */
const POSE_SD_DEG = 1;
/** Deviations of a normal distribution. */
const NINE_IN_TEN = 1.645;
/** Level tapes may look closer together than upright ones by so much: cos 20°, which bends a foot by 6 %. */
const LEAST_SPACING = 0.94;
/** And upright ones than level ones, where the tapes are as far from the camera as they were. */
const MOST_SPACING = 1.1;
/** Closer tapes tell an angle to no better than a degree, pixels. */
const CLOSEST_PX = 15;
/** From level to upright the picture may show so much else than 90°, degrees. */
const TURN_DEG = 6;

/** The rod held level, then upright: where the camera stands square, both look as they are. */
export function liftAngles(level: TapePair, upright: TapePair): RodView | ViewFault {
  const pointsRight = level.outer.x_px > level.inner.x_px;
  const level_deg = pairAngleFrom(level, pointsRight);
  const upright_deg = pairAngleFrom(upright, pointsRight);
  const share = spacing(level) / spacing(upright);
  if (Math.min(spacing(level), spacing(upright)) < CLOSEST_PX) return 'poses';
  if (share < LEAST_SPACING || share > MOST_SPACING) return 'yaw';
  const turned_deg = upright_deg - level_deg;
  if (Math.abs(turned_deg - 90) > TURN_DEG) return 'poses';
  return {
    angleAt: (shown_deg) => ((shown_deg - level_deg) * 90) / turned_deg,
    wayOff_m: (from_deg, to_deg, reach_m) => {
      // Each pose's own error shifts an angle by how near it is to that pose.
      const shift = (atLevel: boolean) =>
        [from_deg, to_deg]
          .map((deg) => Math.sin(deg * RAD) * (atLevel ? 1 - deg / 90 : deg / 90))
          .reduce((from, to) => to - from);
      return NINE_IN_TEN * reach_m * POSE_SD_DEG * RAD * Math.hypot(shift(true), shift(false));
    }
  };
}
