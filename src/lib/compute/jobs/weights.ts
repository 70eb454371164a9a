import { weightChart, type WeightRow } from '../../course/weight-chart';
import type { SetupInput } from '../../model';

/** What each weight of the box does in this water on this gear. Throws ScenarioError for a setup that cannot be run. */
export function weightsFor(setup: SetupInput): WeightRow[] {
  return weightChart(setup);
}
