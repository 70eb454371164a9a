import { isOffBottom, simulate, type Scenario } from '../model';

/**
 * The first that stays down, of times from quick to slow, or undefined: where a quick drag stays down a
 * slower one does, so that it is halved for and not tried one by one.
 */
export function quickest(
  times_s: readonly number[],
  staysDown: (duration_s: number) => boolean
): number | undefined {
  let [from, to] = [0, times_s.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (staysDown(times_s[middle])) to = middle;
    else from = middle + 1;
  }
  return times_s[from];
}

/** The same move made in another time. */
const madeIn = (scenario: Scenario, duration_s: number): Scenario => {
  const { move } = scenario;
  if (move.kind !== 'sweep' && move.kind !== 'lift') {
    throw new RangeError(`contact limit: a ${move.kind} has no pace of its own`);
  }
  return { ...scenario, move: { ...move, duration_s } };
};

/** Shortest of these times in which the scenario's move leaves the bait on the bottom, or undefined. */
export function contactLimit_s(scenario: Scenario, times_s: readonly number[]): number | undefined {
  return quickest(
    times_s,
    (duration_s) => !isOffBottom(simulate(madeIn(scenario, duration_s)).peak_height_m)
  );
}
