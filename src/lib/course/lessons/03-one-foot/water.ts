import type { RodAngles, SetupInput } from '../../../model';

/**
 * Fathomley Water and its rod locker: invented. 11 ft of water, a 5/8 oz jig with a small trailer,
 * 0.30 mm fluorocarbon, and the last 33 ft of a 60 ft cast, where a drag leaves the bottom soonest.
 */
export const fathomley: SetupInput = {
  water: { depth_m: 3.35, temperature_C: 14 },
  bottom: { friction: 0.4 },
  line: { material: 'fluorocarbon', diameter_m: 0.0003 },
  bait: { mass_kg: 0.01772, drag_area_m2: 8e-4 },
  rod: { length_m: 2, pivot_height_m: 1.1, tip_stiffness_N_per_m: 20 },
  start: { bait_x_m: 10, slack_m: 0.03 }
};

/** The rod low, well round to the side: from here the tip pulls nearly straight along the line. */
export const lowToTheSide: RodAngles = { elevation_deg: 0, azimuth_deg: 60 };
