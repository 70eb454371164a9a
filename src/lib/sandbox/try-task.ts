import type { RodAngles, Setup } from '$lib/model';
import type { Plane } from './rod-angles';

export interface TryTask {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly hold_s: number;
  /** A rest of hand and bait shorter than this belongs to the try, s. */
  readonly longest_pause_s: number;
}

export function isSameTask(a: TryTask, b: TryTask): boolean {
  const parts = ['setup', 'plane', 'start', 'hold_s', 'longest_pause_s'] as const;
  return parts.every((part) => a[part] === b[part]);
}
