import { isOffBottom, simulate, type Result, type Scenario } from '../../model';
import type { Band } from '../../scoring';
import { readingOf } from './day-setup';

/** What a move of a plan or a card does, m. */
export interface Moved {
  travel_m: number;
  peak_height_m: number;
  /** How far the tip gets from where it was. */
  tip_m: number;
}

export function movedIn(scenario: Scenario): Moved & Record<string, number> {
  const result = simulate(scenario);
  const { travel_m, peak_height_m } = result;
  return { travel_m, peak_height_m, tip_m: tipFarthest(result) };
}

function tipFarthest({ trace: { tip_x_m: x, tip_z_m: z } }: Result): number {
  return x.reduce((most_m, _, i) => Math.max(most_m, Math.hypot(x[i] - x[0], z[i] - z[0])), 0);
}

/**
 * As they are kept. A jig that leaves the bottom and goes farther than the tip was swung in on a tight
 * line: how far that takes it is no figure to carry, so it has its height alone.
 */
export function readingsOf(bands: Record<keyof Moved, Band>) {
  const { travel_m, peak_height_m, tip_m } = bands;
  const swings = isOffBottom(peak_height_m.nominal) && travel_m.nominal > tip_m.nominal;
  return { came: swings ? null : readingOf(travel_m), high: readingOf(peak_height_m) };
}
