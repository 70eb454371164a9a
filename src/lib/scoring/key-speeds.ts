/** Speeds of the tip under held keys, m/s, from a crawl to a snap. */
export const KEY_SPEEDS_M_S = [0.05, 0.1, 0.15, 0.3, 0.5, 0.8, 1.3, 2, 3.5] as const;
export const FIRST_KEY_SPEED = 3;
/** Where a task is hops alone, or a hook set. */
export const SNAP_KEY_SPEED = 7;
/** A firm sweep, or a hop, that a button makes by itself, m/s: half a metre of line in a quarter of a second. */
export const SET_HOOK_M_S = KEY_SPEEDS_M_S[SNAP_KEY_SPEED];

/** Which of them is nearest to this pace, as a hand tells paces apart: by how many times one is the other. */
export function nearestKeySpeed(pace_m_s: number): number {
  const times = KEY_SPEEDS_M_S.map((m_s) => Math.abs(Math.log(m_s / pace_m_s)));
  return times.indexOf(Math.min(...times));
}
