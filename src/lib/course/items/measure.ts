import { parseScenario, simulateScenario, type Result, type Scenario } from '../../model';
import { contactWhileMoving, cornersOf } from '../../scoring';
import type { ShownRun } from '../lesson';

interface Measure {
  of: (result: Result) => number;
  quantity: 'length' | 'time' | 'share' | 'pull';
  /** Less than this nobody tells apart on the water, whatever the model says. */
  least: number;
}

/** What items ask about, SI. `least` is an inch, a beat of the count, a tenth of the way. */
export const MEASURES = {
  travel_m: { of: (r) => r.travel_m, quantity: 'length', least: 0.025 },
  peak_height_m: { of: (r) => r.peak_height_m, quantity: 'length', least: 0.025 },
  contact: { of: contactWhileMoving, quantity: 'share', least: 0.1 },
  fall_s: { of: fallTime, quantity: 'time', least: 0.5 },
  airborne_s: { of: (r) => r.airborne_s, quantity: 'time', least: 0.3 }
} as const satisfies Record<string, Measure>;

export type MeasureName = keyof typeof MEASURES;

/** What of a scenario nobody knows: slack and drag area, or, where slack is what is asked, drag area. */
export type Unknowns = 'slack and drag' | 'drag';

/** From the splash to the bottom, s; infinite for a bait that has not come down. */
function fallTime({ events }: Result): number {
  return events.find(({ kind }) => kind === 'bottom')?.t_s ?? Infinity;
}

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
  const { of, least } = MEASURES[name];
  const scenario = scenarioOf(run);
  const nominal = of(simulateScenario(scenario));
  const corners = cornersFor(scenario, unknowns).map((corner) => of(simulateScenario(corner)));
  const band = Math.max(least, ...corners.map((value) => Math.abs(value - nominal)));
  return { nominal, corners, band };
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
