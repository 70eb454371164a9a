import type { RodAngles, Setup } from '$lib/model';
import type { Plane } from './rod-angles';
import type { TaskStep } from './task-steps';

export interface TryTask {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly hold_s: number;
  /** A rest of hand and bait shorter than this belongs to the try, s. */
  readonly longest_pause_s: number;
  /** What it takes, in order; none in water without a task. */
  readonly steps: readonly TaskStep[];
}

export function isSameTask(a: TryTask, b: TryTask): boolean {
  const parts = ['setup', 'plane', 'start', 'hold_s', 'longest_pause_s', 'steps'] as const;
  return parts.every((part) => a[part] === b[part]);
}
