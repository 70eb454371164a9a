/** Seconds of processor this process has had, all its threads together. */
export const processor_s = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

export interface WorkDeadline {
  /** Processor time a piece of work may take, s. */
  allowed_s: number;
  /** Whoever asked waits no longer than this by the clock, s; at least `allowed_s`. */
  patience_s: number;
  /** Seconds of processor had so far. */
  had_s: () => number;
  /** Called once, unless cleared before: it took what it may, or it never got that much. */
  late: (why: 'overran' | 'starved') => void;
}

/**
 * A deadline in processor time, as a machine with other work gives a thread little of each second.
 * What all threads had is the most that one can have had: with several at work it comes as early as one by
 * the clock, never earlier.
 * @returns what clears it
 */
export function workDeadline({ allowed_s, patience_s, had_s, late }: WorkDeadline): () => void {
  const had = had_s();
  let waited_s = 0;
  let timer: NodeJS.Timeout;
  const wait = (for_s: number) => {
    waited_s += for_s;
    timer = setTimeout(look, for_s * 1000).unref();
  };
  const look = () => {
    const left_s = allowed_s - (had_s() - had);
    if (left_s <= 0) return late('overran');
    if (waited_s >= patience_s) return late('starved');
    wait(Math.min(left_s, patience_s - waited_s));
  };
  wait(allowed_s);
  return () => clearTimeout(timer);
}
