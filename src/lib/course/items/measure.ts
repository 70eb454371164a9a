import { parseScenario, type Scenario } from '../../model';
import { bandOf, type Unknowns } from '../../scoring';
import type { ShownRun } from '../lesson';
import { figuresOf } from './figures';
import { MEASURES, type Measure, type MeasureName } from './measures';

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
  return isAboveBy(a, b, MEASURES[name].least);
}

/** Whether a boat can tell which of two ranked moves did more: surely above, and far enough. */
function isFarAbove(a: RunMeasures, b: RunMeasures, name: MeasureName): boolean {
  const { least, apart, apartShare = 0 }: Measure = MEASURES[name];
  const enough = Math.max(apart, apartShare * a.nominal);
  return a.nominal - b.nominal > enough && isAboveBy(a, b, least);
}

function isAboveBy(a: RunMeasures, b: RunMeasures, by: number): boolean {
  return a.nominal - b.nominal > by && a.corners.every((value, i) => value - b.corners[i] > by);
}

/**
 * Whether the ranked, most first, are far enough apart for what is asked: one after the other, or the
 * most or the least from all others.
 */
export function areFarApart(
  ranked: readonly RunMeasures[],
  name: MeasureName,
  pick?: 'most' | 'least'
): boolean {
  if (pick === 'most') return ranked.slice(1).every((one) => isFarAbove(ranked[0], one, name));
  const last = ranked[ranked.length - 1];
  if (pick === 'least') return ranked.slice(0, -1).every((one) => isFarAbove(one, last, name));
  return ranked.slice(1).every((one, i) => isFarAbove(ranked[i], one, name));
}

/** What is wrong with saying that the first has so many times the second's, at least and at most. */
export function timesFaults(
  times: readonly [number, number] | undefined,
  [first, second]: readonly RunMeasures[]
): string[] {
  if (!times) return [];
  const ratios = allOf(first).map((value, i) => value / allOf(second)[i]);
  const beyond = ratios.filter((ratio) => ratio < times[0] || ratio > times[1]);
  const figures = beyond.map((ratio) => ratio.toFixed(2)).join(', ');
  return beyond.length === 0
    ? []
    : [`the first has ${figures} times the second, not ${times[0]} to ${times[1]}`];
}

export const allOf = ({ nominal, corners }: RunMeasures) => [nominal, ...corners];
