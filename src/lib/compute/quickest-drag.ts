/** The quickest that a drag is tried in, s: a jerk. */
export const QUICKEST_S = 0.4;

/** The quickest pace that is tried of a drag so long, m/s: no limit is told above it. */
export const mostPace_m_s = (tip_m: number): number => tip_m / QUICKEST_S;
