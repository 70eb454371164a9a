/** Angles as a camera gave them, each at its own time. */
export interface RodRecording {
  /** s, increasing. */
  readonly t_s: readonly number[];
  readonly angle_deg: readonly number[];
}

/** Half-width of the filter, s: for a quick move, and for one of two seconds and more. */
const QUICK_S = 0.06;
const SLOW_S = 0.1;
const SLOW_MOVE_S = 2;
/** Farther than so many half-widths a reading has no weight left. */
const TAIL = 3;

/** How wide a move of this length is filtered, s. */
export function filterWidth_s(duration_s: number): number {
  return QUICK_S + (SLOW_S - QUICK_S) * Math.min(Math.max(duration_s / SLOW_MOVE_S, 0), 1);
}

/**
 * The recording at even times, `rate_Hz` of them a second, through a Gaussian about each: no phase, so
 * nothing comes late, and no jitter, which a bait that only comes nearer would add up.
 */
export function filtered(recording: RodRecording, rate_Hz: number, width_s: number): number[] {
  const { t_s, angle_deg } = bridged(recording, width_s);
  if (t_s.length === 0) return [];
  const count = Math.floor((t_s[t_s.length - 1] - t_s[0]) * rate_Hz) + 1;
  let first = 0;
  return Array.from({ length: count }, (_, i) => {
    const now_s = t_s[0] + i / rate_Hz;
    while (first < t_s.length - 1 && t_s[first] < now_s - TAIL * width_s) first++;
    return about(t_s, angle_deg, first, now_s, width_s);
  });
}

/**
 * The same with a straight line over each gap, readings on it no farther apart than this: a line that is
 * laid through readings on one side of a gap alone runs past the next, and comes back, farther than the rod.
 */
function bridged({ t_s, angle_deg }: RodRecording, apart_s: number): RodRecording {
  const times = t_s.flatMap((to_s, i) => {
    const from_s = t_s[i - 1] ?? to_s;
    const steps = Math.max(1, Math.ceil((to_s - from_s) / apart_s));
    return Array.from({ length: steps }, (_, k) => ({ i, share: (k + 1) / steps }));
  });
  const between = (values: readonly number[]) =>
    times.map(({ i, share }) =>
      share === 1 ? values[i] : values[i - 1] + share * (values[i] - values[i - 1])
    );
  return { t_s: between(t_s), angle_deg: between(angle_deg) };
}

/** A straight line under the Gaussian: a mean alone would pull the ends of a ramp inwards. */
function about(
  t_s: readonly number[],
  values: readonly number[],
  first: number,
  now_s: number,
  width_s: number
): number {
  let [sum, sumT, sumTT, sumV, sumTV] = [0, 0, 0, 0, 0];
  for (let k = first; k < t_s.length && t_s[k] <= now_s + TAIL * width_s; k++) {
    const away = t_s[k] - now_s;
    const weight = Math.exp(-0.5 * (away / width_s) ** 2);
    sum += weight;
    sumT += weight * away;
    sumTT += weight * away * away;
    sumV += weight * values[k];
    sumTV += weight * away * values[k];
  }
  const spread = sum * sumTT - sumT * sumT;
  return spread > 1e-9 * sum * sum ? (sumTT * sumV - sumT * sumTV) / spread : sumV / sum;
}
