/** One figure of the bench. `target` is a bound: "at least" for rates and shares, "at most" for costs. */
export interface Metric {
  value: number;
  unit: string;
  target: { atLeast: number } | { atMost: number } | null;
}

export type Metrics = Record<string, Metric>;

export function isMet({ value, target }: Metric): boolean | null {
  if (target === null) return null;
  return 'atLeast' in target ? value >= target.atLeast : value <= target.atMost;
}

/** One CPU second of this process, user time: what other programs do does not count. */
export function cpuSeconds(work: () => void): number {
  const before = process.cpuUsage().user;
  work();
  return (process.cpuUsage().user - before) / 1e6;
}

/** The value below which the given share of `values` lies. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}
