import type { Trace } from '$lib/model';

export interface PullLine {
  path: string;
  /** Its length, s. */
  ends_s: number;
}

/** The pull at the tip over time as the path of a drawing `width` by `height`. */
export function pullLine(
  { t_s, tip_tension_N: pull }: Trace,
  width: number,
  height: number
): PullLine {
  const most_N = Math.max(...pull, 0.1) * 1.1;
  const ends_s = t_s[t_s.length - 1];
  const at = (i: number) =>
    `${((width * t_s[i]) / ends_s).toFixed(1)} ${(height * (1 - pull[i] / most_N)).toFixed(1)}`;
  return { path: `M${t_s.map((_, i) => at(i)).join('L')}`, ends_s };
}
