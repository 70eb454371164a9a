/** Marks of 100 from which a challenge counts as passed. */
export const PASS_MARK = 70;
/** Least marks of a challenge's own reference move. */
export const REFERENCE_MARK = 95;
