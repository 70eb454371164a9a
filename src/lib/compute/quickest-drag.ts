/** The quickest that a drag is tried in, s: a jerk. */
export const QUICKEST_S = 0.4;
