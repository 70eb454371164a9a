/**
 * When a bait is at rest, has skipped, is off the bottom and has hopped. Model, marks, plots, questions
 * and words all take it from here, so that none says "lifted" beside another's "stayed down".
 */

/**
 * Slower than this a bait has come to rest, m/s: a millimetre in half a second. Larger, and the slow
 * creep of a settling line is rest; smaller, and rounding keeps a bait that lies still in motion.
 */
export const REST_SPEED_M_S = 2e-3;

/**
 * A bait has skipped once it clears the bottom by this, m: less is the grain of the bottom. Larger, and
 * words say of a bait that left the bottom for a moment that it never did.
 */
export const SKIP_M = 2e-3;

/**
 * A bait is off the bottom once it clears it by this, m: half an inch, the least that a hand could mean
 * or avoid; and a flight that goes so high is a hop. Smaller, and the skips of a drag are hops; larger
 * than a few inches, and the hops that lessons ask for are none.
 */
export const OFF_BOTTOM_M = 0.0127;

/** Whether a bait that clears the bottom by `height_m` at its highest has left it: lifted, or hopped. */
export function isOffBottom(height_m: number): boolean {
  return height_m >= OFF_BOTTOM_M;
}

/**
 * How high a bait is, m: above the bottom below it and above where it left it. To fall off a ledge is no
 * height, nor is what a rock below takes away.
 */
export function riseOver(clearance_m: number, z_m: number, takeOffZ_m: number): number {
  return Math.min(clearance_m, z_m - takeOffZ_m);
}
