/**
 * Marks of 100 from which a challenge counts as passed. Most challenges have three goals of a third
 * each: two met and one missed altogether is 67 to 69, which is to lie clear below. Lower, and a move
 * made blind comes within a mark of passing.
 */
export const PASS_MARK = 75;
/** Least marks of a challenge's own reference move. */
export const REFERENCE_MARK = 95;
