/** When the frames of a clip were taken, and what is wrong with that. */
export interface FrameTimes {
  /** s, as the clip counts; increasing. */
  readonly t_s: readonly number[];
  /** Frames before which others seem to be missing. */
  readonly gaps: readonly number[];
  /** Frames that came with a time no later than the one before: they are left out of `t_s`. */
  readonly repeats: number;
}

/**
 * Steps up to this share of all, the shorter ones, are the clip's own: a phone that varies its rate
 * has long ones too, a steady one has none.
 */
const OWN_STEPS = 0.9;
/** A step longer by so much than the longest of those has a frame missing: at a steady rate it has two. */
const GAP_STEPS = 1.6;

export function frameTimes(stamps_s: readonly number[]): FrameTimes {
  const t_s: number[] = [];
  for (const stamp_s of stamps_s) {
    if (t_s.length === 0 || stamp_s > t_s[t_s.length - 1]) t_s.push(stamp_s);
  }
  const steps = t_s.slice(1).map((t, i) => t - t_s[i]);
  const sorted = [...steps].sort((a, b) => a - b);
  const longest_s = sorted[Math.floor(OWN_STEPS * (sorted.length - 1))] ?? 0;
  const gaps = steps.flatMap((step, i) => (step > GAP_STEPS * longest_s ? [i + 1] : []));
  return { t_s, gaps, repeats: stamps_s.length - t_s.length };
}
