import { degToRad, STANDARD_ROD, type RodAngles, type SetupInput } from '$lib/model';

/** The drawing's size in its own units. */
export const SKETCH = { width: 240, height: 112 } as const;

/** Room under the bottom and beyond the bait, and behind the hand for the boat, units. */
const BED = 12;
const BEYOND = 14;
const BEHIND = 34;
/** An angler's head above the gripping hand, m, and air above whatever is highest, units. */
const HEAD_M = 0.75;
const AIR = 6;

/** A cast as it lies before a try: what a drawing of it needs of a setup and of where the rod points. */
export interface Cast {
  readonly setup: Pick<SetupInput, 'water' | 'start' | 'rod'>;
  readonly start: RodAngles;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}
export interface CastSketch {
  readonly surface: number;
  readonly bed: number;
  readonly hand: Spot;
  readonly tip: Spot;
  readonly bait: Spot;
  /** Towards which the line bows: a slack one hangs. */
  readonly bow: Spot;
}

/** Boat, rod, line and bait to one scale, the boat to the right as in practice water. */
export function castSketch({ setup, start }: Cast): CastSketch {
  const { pivot_height_m, length_m } = { ...STANDARD_ROD, ...setup.rod };
  const out_m = Math.abs(setup.start.bait_x_m);
  const { depth_m } = setup.water;
  const up_m = length_m * Math.sin(degToRad(start.elevation_deg));
  // A rod to the side points out of the picture: what is seen of it is its reach towards the bait.
  const along_m =
    length_m * Math.cos(degToRad(start.elevation_deg)) * Math.cos(degToRad(start.azimuth_deg));
  const high_m = pivot_height_m + Math.max(up_m, HEAD_M);
  const scale = Math.min(
    (SKETCH.width - BEYOND - BEHIND) / Math.max(out_m, along_m),
    (SKETCH.height - BED - AIR) / (high_m + depth_m)
  );
  const bed = SKETCH.height - BED;
  const surface = bed - depth_m * scale;
  const hand = { x: SKETCH.width - BEHIND, y: surface - pivot_height_m * scale };
  const isSplash = setup.start.line === 'splash';
  const tip = { x: hand.x - along_m * scale, y: hand.y - up_m * scale };
  const bait = { x: hand.x - out_m * scale, y: isSplash ? surface : bed };
  const sag_m = sagOf(Math.hypot(tip.x - bait.x, tip.y - bait.y) / scale, setup.start.slack_m);
  return {
    surface,
    bed,
    hand,
    tip,
    bait,
    // A curve goes half as far as what it bows towards; and no line hangs below the bottom.
    bow: { x: (tip.x + bait.x) / 2, y: Math.min((tip.y + bait.y) / 2 + 2 * sag_m * scale, bed) }
  };
}

/** How far a line hangs in its middle that is so much longer than its span, m: a shallow parabola's length, turned round. */
function sagOf(span_m: number, slack_m = 0): number {
  return Math.sqrt((3 / 8) * span_m * slack_m);
}
