import { TICK_S, type Result } from '../model';
import type { Challenge } from './challenge';

/**
 * A run as the hand that stands in the boat knows it: from a boat that drifts, the tip's way without the
 * boat's, which no hand made. What the bait did stays as it was.
 */
export function handRun({ setup }: Pick<Challenge, 'setup'>, result: Result): Result {
  const drift_m_s = (setup.drift_m_s ?? 0) * Math.sign(setup.start.bait_x_m);
  if (drift_m_s === 0) return result;
  const tip_x_m = result.trace.tip_x_m.map((x, i) => x - drift_m_s * i * TICK_S);
  return { ...result, trace: { ...result.trace, tip_x_m } };
}
