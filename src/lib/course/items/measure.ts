import { parseScenario, type Scenario } from '../../model';
import { bandOf, type Unknowns } from '../../scoring';
import type { ShownRun } from '../lesson';
import { figuresOf, MEASURES, type MeasureName } from './figures';

export function shownScenarioOf({ setup, move, hold_s }: ShownRun): Scenario {
  return parseScenario({ ...setup, move, hold_s });
}

export interface RunMeasures {
  nominal: number;
  /** In every corner of what is unknown, in the same order for every run. */
  corners: number[];
  /** Farthest corner from the nominal, at least what can be told apart. */
  band: number;
}

/** As it is said, with nothing tried of what is unknown: one run. */
export function nominalOf(run: ShownRun, name: MeasureName): number {
  return figuresOf(measuredScenarioOf(run, name))[name];
}

/** Nothing that comes after a fall is asked of one: what lies on the bottom then costs more than the fall. */
function measuredScenarioOf(run: ShownRun, name: MeasureName): Scenario {
  const scenario = shownScenarioOf(run);
  return name === 'fall_s' ? { ...scenario, until: 'bottom' } : scenario;
}

export function measured(run: ShownRun, name: MeasureName, unknowns: Unknowns): RunMeasures {
  const scenario = measuredScenarioOf(run, name);
  const { nominal, corners, half } = bandOf(scenario, (one) => figuresOf(one)[name], unknowns);
  return { nominal, corners, band: Math.max(MEASURES[name].least, half) };
}

/** Whether `a` is above `b` in the middle and in every corner, by more than can be told apart. */
export function isAbove(a: RunMeasures, b: RunMeasures, name: MeasureName): boolean {
  const { least } = MEASURES[name];
  return (
    a.nominal - b.nominal > least && a.corners.every((value, i) => value - b.corners[i] > least)
  );
}
