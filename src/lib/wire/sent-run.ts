import { parseScenario, ScenarioError, type Scenario } from '../model';
import { DataError } from '../scoring';
import { readBy } from './fields';

/** Longest run that a page plays from a link, s: a fall into deep water, and no minutes of the model. */
const LONGEST_S = 120;

/** A whole run as a link holds it. How finely the model runs is ours to say, as for a challenge. */
export const sentRun = readBy<Scenario>((input) => {
  const run = read(input);
  const { numerics } = input as { numerics?: unknown };
  if (numerics !== undefined) {
    throw new DataError('numerics', numerics, 'is not for others to set');
  }
  if (run.hold_s > LONGEST_S) {
    throw new DataError('hold_s', run.hold_s, `must be ${LONGEST_S} s or less`);
  }
  return run;
});

function read(input: unknown): Scenario {
  try {
    return parseScenario(input);
  } catch (error) {
    if (!(error instanceof ScenarioError)) throw error;
    throw new DataError(error.path, error.value, error.reason);
  }
}
