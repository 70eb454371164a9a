import type { View } from './view';

/**
 * The close-up of the bait does not follow it: the ruler's zero stays in view, and the picture goes
 * over to the next smaller scale when the bait would leave it.
 */

/** Widths it can have, m: 3, 4, 6, 8, 12, … ft. */
const WIDTHS_M = [0.9, 1.2, 1.8, 2.4, 3.6, 4.9, 7.3, 11, 15, 24, 40, 80];
/** Share of the width behind the start, for the skirt and what a slack line drags back. */
const BEHIND_SHARE = 0.16;
/** Share that stays free on the other sides. */
const FREE_SHARE = 0.1;
/** What the words at the top of a low picture take, px: goals, lines and marks keep below it. */
export const WORDS_PX = 30;
/** Ground below the bait, and under it the ruler, px. */
export const BED_PX = 30;
export const STRIP_PX = 34;

/** A bait with its skirt stands so far over its lowest point, m: clear of the words, on a rock too. */
const BAIT_M = 0.06;

/** What has to be seen: travel along the bottom and clearance above and below its start, m. */
export interface CloseUpExtent {
  least_travel_m: number;
  most_travel_m: number;
  most_height_m: number;
  /** Below the start, over a ledge or down a slope. */
  most_fall_m: number;
}

/** The close-up that holds `reach`; x in the model's frame, the bait having started at (x, z). */
export function closeUp(
  reach: CloseUpExtent,
  start: { x_m: number; z_m: number },
  width: number,
  height: number
): View {
  const holds = (span_m: number) => {
    const scale = width / span_m;
    const water_px = height - BED_PX - STRIP_PX;
    const above_m = (water_px - Math.max(FREE_SHARE * water_px, WORDS_PX)) / scale;
    return (
      reach.most_travel_m <= span_m * (1 - BEHIND_SHARE - FREE_SHARE) &&
      -reach.least_travel_m <= span_m * BEHIND_SHARE * 0.8 &&
      reach.most_height_m + BAIT_M + reach.most_fall_m <= above_m
    );
  };
  const span_m = WIDTHS_M.find(holds) ?? WIDTHS_M[WIDTHS_M.length - 1];
  const scale = width / span_m;
  const zeroX = width * BEHIND_SHARE;
  return {
    width,
    height,
    scale,
    x0: zeroX + start.x_m * scale,
    y0: height - BED_PX - STRIP_PX + (start.z_m - reach.most_fall_m) * scale
  };
}
