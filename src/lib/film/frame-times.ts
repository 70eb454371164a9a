/** When the frames of a clip were taken, and what is wrong with that. */
export interface FrameTimes {
  /** s, as the clip counts; increasing. */
  readonly t_s: readonly number[];
  /** Usual time from frame to frame, s. */
  readonly usual_s: number;
  /** Frames before which others seem to be missing. */
  readonly gaps: readonly number[];
  /** Frames that came with a time no later than the one before: they are left out of `t_s`. */
  readonly repeats: number;
}

/**
 * Longer than so many usual steps, something is missing. Phones that vary their rate double a step
 * in poor light; beyond that a frame was dropped.
 */
const GAP_STEPS = 2.5;

export function frameTimes(stamps_s: readonly number[]): FrameTimes {
  const t_s: number[] = [];
  for (const stamp_s of stamps_s) {
    if (t_s.length === 0 || stamp_s > t_s[t_s.length - 1]) t_s.push(stamp_s);
  }
  const steps = t_s.slice(1).map((t, i) => t - t_s[i]);
  const usual_s = median(steps);
  const gaps = steps.flatMap((step, i) => (step > GAP_STEPS * usual_s ? [i + 1] : []));
  return { t_s, usual_s, gaps, repeats: stamps_s.length - t_s.length };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length > 0 ? sorted[sorted.length >> 1] : 0;
}
