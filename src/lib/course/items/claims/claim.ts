import type { Basis } from '../../basis';

/** As a lesson’s claim, or on its `answer`: it follows from what makes the key right, which each check computes anew. */
export interface QuestionClaim {
  says: readonly string[];
  basis: Basis | 'answer';
}

/** Of questions by their names, for those whose sentences do not all rest on common practice. */
export type QuestionClaims = Readonly<Record<string, readonly QuestionClaim[]>>;

/** These words rest on that. */
export const on = (basis: QuestionClaim['basis'], ...says: string[]): QuestionClaim => ({
  says,
  basis
});
