import { TICK_S, type Result, type SetupInput } from '../model';

/** What it has to know of the water. */
interface Watered {
  readonly setup: Pick<SetupInput, 'drift_m_s' | 'start'>;
}

/**
 * A run as the hand that stands in the boat knows it: from a boat that drifts, the tip's way without the
 * boat's, which no hand made. What the bait did stays as it was.
 */
export function handRun<Run extends Pick<Result, 'trace'>>({ setup }: Watered, result: Run): Run {
  const drift_m_s = (setup.drift_m_s ?? 0) * Math.sign(setup.start.bait_x_m);
  if (drift_m_s === 0) return result;
  const tip_x_m = result.trace.tip_x_m.map((x, i) => x - drift_m_s * i * TICK_S);
  return { ...result, trace: { ...result.trace, tip_x_m } };
}
