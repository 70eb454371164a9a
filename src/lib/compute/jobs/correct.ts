import {
  gradeTry,
  needsSeveralMoves,
  solveCorrection,
  type Challenge,
  type Correction
} from '../../scoring';

/** The move that would have done it; null where no single smooth one does. */
export function correct(challenge: Challenge): Correction | null {
  return solveCorrection(challenge);
}

/**
 * Whether a challenge can be done in its own gear: one move is found where there is one; of several the
 * lesson's own tell that it can be done, or nothing. Throws ScenarioError where no line finds its rest.
 */
export function canBeDone(challenge: Challenge): 'yes' | 'no' | 'unknown' {
  if (!needsSeveralMoves(challenge)) return solveCorrection(challenge) ? 'yes' : 'no';
  const isDone = gradeTry(challenge, challenge.reference).grade.passed;
  return isDone ? 'yes' : 'unknown';
}
