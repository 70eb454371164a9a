import { riseOver, SKIP_M } from './lift-off';
import type { Trace } from './record';

/** One flight in a trace that cleared the bottom by a skip or more. */
export interface Lift {
  /** Its first tick off the bottom, and the one after its last. */
  readonly from: number;
  readonly to: number;
  /** Highest, m, as of a Hop; Infinity for a fall from where it never touched. */
  readonly rise_m: number;
}

/** 0 in a tick of a lift, 1 in any other: contact as it is drawn, told and graded. */
export function contactBeside(ticks: number, lifts: readonly Lift[]): (0 | 1)[] {
  const contact = new Array<0 | 1>(ticks).fill(1);
  for (const { from, to } of lifts) contact.fill(0, from, to);
  return contact;
}

/** What pictures draw and words call off the bottom: all flights but those lower than its grain. */
export function liftsOf(
  { contact, bait_x_m: x, bait_z_m: z }: Pick<Trace, 'contact' | 'bait_x_m' | 'bait_z_m'>,
  heightAt: (x_m: number) => number
): Lift[] {
  const lifts: Lift[] = [];
  let takeOffZ_m = -Infinity;
  let [from, rise_m] = [0, 0];
  for (let i = 0; i <= contact.length; i++) {
    if (i < contact.length && contact[i] === 0) {
      // The bottom is asked for only where it could matter: it may be of many stones.
      if (z[i] - takeOffZ_m <= rise_m) continue;
      rise_m =
        takeOffZ_m === -Infinity
          ? Infinity
          : Math.max(rise_m, riseOver(z[i] - heightAt(x[i]), z[i], takeOffZ_m));
      continue;
    }
    if (i > from && rise_m >= SKIP_M) lifts.push({ from, to: i, rise_m });
    takeOffZ_m = z[i];
    [from, rise_m] = [i + 1, 0];
  }
  return lifts;
}
