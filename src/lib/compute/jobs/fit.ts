import { fit, parseSession, sessionInputOf, type FitResult } from '../../fit';
import type { TestSession } from '../../wire';

/** What a fit reads of a session. */
export type GivenSession = Pick<TestSession, 'gear' | 'tests' | 'known' | 'drops'>;

/** Throws ScenarioError with path and value for gear or tests that cannot be. */
export function fitted(given: GivenSession, tell?: (share: number) => void): FitResult {
  return fit(parseSession(sessionInputOf(given)), { tell });
}
