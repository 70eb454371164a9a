import type { Estimate } from './result';
import type { Session } from './session';
import { unknownsOf, Z90 } from './unknowns';
import type { UnknownName } from '../scoring';
import type { PooledValue } from './agreement';

/** What of an unknown several people can pool: the jig's own; rod, hand and slack are each one's. */
export const POOLED_NAMES = ['drag_area_m2', 'lift_to_drag'] as const satisfies UnknownName[];
export type PooledName = (typeof POOLED_NAMES)[number];

/** Goes over to the scale on which errors are even, and back: a drag area is known as a factor. */
export const POOLED_SCALE: Record<
  PooledName,
  { to: (value: number) => number; from: (scaled: number) => number }
> = {
  drag_area_m2: { to: Math.log, from: Math.exp },
  lift_to_drag: { to: (value) => value, from: (scaled) => scaled }
};

/**
 * What one session's own measurements say of a number of its jig, on the pooled scale. Each fit leans on
 * what was thought before any test; pooled as they are, that would count once a person. In the fit's own
 * scale the prior is a standard normal, so with u and s what the fit found, precision 1/s² − 1 is the
 * measurements' and their value u/s² over it. Null where they do not tell the number.
 */
export function ownValueOf(
  session: Session,
  name: PooledName,
  { estimate, interval90: [least, most], told }: Estimate
): PooledValue | null {
  if (!told) return null;
  const unknown = unknownsOf({ ...session, drops: [] }).find((one) => one.name === name);
  if (!unknown) return null;
  const { to } = POOLED_SCALE[name];
  const s = (unknown.scaledOf(most) - unknown.scaledOf(least)) / (2 * Z90);
  const precision = 1 / s ** 2 - 1;
  if (precision <= 0) return null;
  const value = unknown.scaledOf(estimate) / s ** 2 / precision;
  // One prior deviation on the pooled scale: even steps there are even steps of the fit.
  const step = to(unknown.at(1)) - to(unknown.at(0));
  return { value: to(unknown.at(0)) + value * step, sd: step / Math.sqrt(precision) };
}
