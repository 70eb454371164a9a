import { FIRST_KEY_SPEED, KEY_SPEEDS_M_S, nearestKeySpeed, SNAP_KEY_SPEED } from '$lib/scoring';
import { isSnapAlone, upwards, type TaskStep } from './task-steps';

/** The speeds of a task’s buttons, m/s, from a crawl to a snap; and which of them they begin with. */
export interface ButtonPaces {
  readonly m_s: readonly number[];
  readonly first: number;
}

/** A task’s buttons begin at its first pull’s own pace, in place of the speed nearest to it: held for the time asked they go the way asked. */
export function buttonPaces(steps: readonly TaskStep[], rodLength_m: number): ButtonPaces {
  if (isSnapAlone(steps)) return { m_s: KEY_SPEEDS_M_S, first: SNAP_KEY_SPEED };
  const [pull] = upwards(steps);
  if (!pull) return { m_s: KEY_SPEEDS_M_S, first: FIRST_KEY_SPEED };
  const own_m_s = ((pull.pace_deg_s * Math.PI) / 180) * rodLength_m;
  const first = nearestKeySpeed(own_m_s);
  return { m_s: KEY_SPEEDS_M_S.map((m_s, i) => (i === first ? own_m_s : m_s)), first };
}
