import { parseSetup, type Setup } from '../../src/lib/model';

/** A small water of our own, quick to compute: shallow, near, with few segments. */
export function smallWater(change: Record<string, unknown> = {}): Setup {
  return parseSetup({
    water: { depth_m: 3.1 },
    line: { diameter_m: 0.3e-3 },
    bait: { mass_kg: 0.016 },
    rod: { length_m: 1.7, pivot_height_m: 1.25 },
    start: { bait_x_m: 14.2, slack_m: 0.05 },
    numerics: { segments: 16 },
    ...change
  });
}
