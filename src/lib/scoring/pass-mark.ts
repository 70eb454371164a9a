/** Marks of a challenge: all of its goals met. */
export const TOTAL_MARKS = 100;
/**
 * Marks from which a challenge counts as passed. What was to be done and was not costs more than what
 * this leaves, see fading.ts; so does one whole side condition of a third of the marks. Lower, and a move
 * made blind comes within a mark of passing.
 */
export const PASS_MARK = 75;
/** Least marks of a challenge's own reference move. */
export const REFERENCE_MARK = 95;
