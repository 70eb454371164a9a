import { parseScenario, type Scenario } from '../../model';
import { cornersOf } from '../../scoring';
import type { ShownRun } from '../lesson';
import { figuresOf, MEASURES, type MeasureName } from './figures';

/** What of a scenario nobody knows: slack and drag area, or, where slack is what is asked, drag area. */
export type Unknowns = 'slack and drag' | 'drag';

export function scenarioOf({ setup, move, hold_s }: ShownRun): Scenario {
  return parseScenario({ ...setup, move, hold_s });
}

export interface Measured {
  nominal: number;
  /** In every corner of what is unknown, in the same order for every run. */
  corners: number[];
  /** Farthest corner from the nominal, at least what can be told apart. */
  band: number;
}

export function measured(run: ShownRun, name: MeasureName, unknowns: Unknowns): Measured {
  const scenario = scenarioOf(run);
  const nominal = figuresOf(scenario)[name];
  const corners = cornersFor(scenario, unknowns).map((corner) => figuresOf(corner)[name]);
  const far = corners.map((value) => Math.abs(value - nominal));
  return { nominal, corners, band: Math.max(MEASURES[name].least, ...far) };
}

export function cornersFor(scenario: Scenario, unknowns: Unknowns): Scenario[] {
  const corners = cornersOf(scenario);
  if (unknowns === 'slack and drag') return corners;
  const { start } = scenario;
  return corners.slice(0, 2).map((corner) => ({ ...corner, start }));
}

/** Whether `a` is above `b` in the middle and in every corner, by more than can be told apart. */
export function isAbove(a: Measured, b: Measured, name: MeasureName): boolean {
  const { least } = MEASURES[name];
  return (
    a.nominal - b.nominal > least && a.corners.every((value, i) => value - b.corners[i] > least)
  );
}
