import { parseScenario, recordScenario, type RecordedRun, type ScenarioInput } from '../../model';

/** Runs with all that came of them, for whoever shows them. Throws ScenarioError for one that cannot be. */
export function recordRuns(scenarios: readonly ScenarioInput[]): RecordedRun[] {
  return scenarios.map((input) => recordScenario(parseScenario(input)));
}
