import * as v from 'valibot';
import { numberIn } from './schema-parts';

/**
 * A fish as the hand gets to know it: a force on the bait. Sizes and times are common practice, no
 * source: what matters is that it reaches the hand through the same line as the bottom does.
 */
export const biteSchema = v.strictObject({
  t_s: numberIn(0, 600),
  kind: v.picklist(['tap', 'mush', 'weight gone', 'moving off'])
});
export type Bite = v.InferOutput<typeof biteSchema>;

const TAP_N = 0.9;
const TAP_S = 0.05;
const TAP_GAP_S = 0.16;
const MUSH_N = 0.22;
const MUSH_S = 2;
/** Share of the bait's weight that a fish coming up with it carries. */
const CARRIED = 0.95;
const CARRY_S = 2;
const OFF_N = 1.1;
const OFF_S = 3;
const RISE_S = 0.35;

/** How long each kind lasts, s. */
export const BITE_S: Record<Bite['kind'], number> = {
  tap: TAP_GAP_S + TAP_S,
  mush: MUSH_S,
  'weight gone': CARRY_S,
  'moving off': OFF_S
};

/** Adds to `out` the force of `bite`, N, `t_s` after the start; away is the bait's side of the boat. */
export function addBite(
  bite: Bite,
  t_s: number,
  away: number,
  weightInWater_N: number,
  out: { x: number; z: number }
): void {
  const t = t_s - bite.t_s;
  if (t < 0 || t > BITE_S[bite.kind]) return;
  switch (bite.kind) {
    case 'tap':
      if (t < TAP_S || t > TAP_GAP_S) out.x += away * TAP_N;
      return;
    case 'mush':
      out.x += away * MUSH_N * eased(t, MUSH_S);
      return;
    case 'weight gone':
      out.z += CARRIED * weightInWater_N * eased(t, CARRY_S);
      out.x -= away * 0.3 * weightInWater_N * eased(t, CARRY_S);
      return;
    case 'moving off':
      out.x += away * OFF_N * eased(t, OFF_S);
      out.z += 0.3 * OFF_N * eased(t, OFF_S);
  }
}

/** Rises over RISE_S, stays, and falls as it rose. */
function eased(t: number, whole_s: number): number {
  return Math.min(1, t / RISE_S, (whole_s - t) / RISE_S);
}
