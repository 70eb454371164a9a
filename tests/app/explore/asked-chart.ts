import { AXES } from '../../../src/lib/app/explore/axes';
import { exploredScenario, type ExploreBase } from '../../../src/lib/app/explore/base';
import type { AskJob, ChartPoint, ChartWanted, Stage } from '../../../src/lib/app/explore/chart';
import { fallTimes } from '../../../src/lib/compute/jobs/falls';
import { figuresOfRuns } from '../../../src/lib/compute/jobs/figures';
import { contactLimits } from '../../../src/lib/compute/jobs/limits';
import { FOOT_M, parseScenario, type Scenario } from '../../../src/lib/model';
import { FIRST_GEAR, setupOf } from '../../../src/lib/sandbox/gear';

export const base: ExploreBase = {
  setup: setupOf(FIRST_GEAR),
  kind: 'sweep',
  tip_m: 2 * FOOT_M,
  duration_s: 1.5,
  hand: 0.25
};
export const wanted: ChartWanted = {
  kind: 'runs',
  axis: AXES.depth,
  base,
  kept: null,
  units: 'imperial'
};

const JOBS = { figures: figuresOfRuns, limits: contactLimits, falls: fallTimes };
/** Compute without its threads. */
export const ask = (async (job: keyof typeof JOBS, given: never) =>
  JOBS[job](given)) as unknown as AskJob;

/** A run that can be made; where there is none the test has failed. */
export function made(one: ExploreBase): Scenario {
  const scenario = exploredScenario(one);
  if (!scenario) throw new Error('this rod cannot make the move');
  return parseScenario(scenario);
}

export async function firstBanded(stages: readonly Stage[]): Promise<ChartPoint> {
  for (const { make } of stages) {
    const [point] = await make(ask);
    if (point.readings.travel_m?.ends) return point;
  }
  throw new Error('no stage has a band');
}
