import type { Unknowns } from '../scoring';
import type { Basis } from './basis';
import { allOf, isAbove, measured, timesFaults, type RunMeasures } from './items/measure';
import { MEASURES, type MeasureName, type SignName } from './items/measures';
import { isCertainSign } from './items/sign';
import type { ShownRun } from './lesson';

type RunBasis = Extract<Basis, { run: string }>;

/** What the runs do not show of what is said to rest on them. */
export function basisFaults(basis: Basis, runs: ReadonlyMap<string, ShownRun>): string[] {
  if (basis === 'practice' || 'published' in basis) return [];
  const names = 'run' in basis ? [basis.run] : basis.of;
  const missing = names.filter((id) => !runs.has(id));
  if (missing.length > 0) return [`there is no run called ${missing.join(', ')}`];
  const shown = names.map((id) => runs.get(id) as ShownRun);
  const { unknowns = 'slack and drag' } = basis;
  if ('most' in basis) {
    const values = shown.map((run) => measured(run, basis.most, unknowns));
    const isRow = values.slice(1).every((one, i) => isAbove(values[i], one, basis.most));
    const figures = values.map(({ nominal }) => nominal.toFixed(3)).join(', ');
    if (!isRow) return [`the runs do not show the most first: ${figures}`];
    return timesFaults(basis.times, values);
  }
  if ('alike' in basis) {
    const [first, ...others] = shown.map((run) => measured(run, basis.alike, unknowns));
    const off = others.map((one) => farthestApart(first, one));
    const isAlike = Math.max(...off) <= MEASURES[basis.alike].apart;
    return isAlike ? [] : [`the runs are apart by ${off.map((one) => one.toFixed(3)).join(', ')}`];
  }
  return [
    ...signFaults(basis.sign, shown[0], unknowns),
    ...holdFaults(basis.holds ?? {}, shown[0], unknowns)
  ];
}

/** By how much two runs differ at most, each with the same of what is unknown. */
function farthestApart(a: RunMeasures, b: RunMeasures): number {
  return Math.max(...allOf(a).map((value, i) => Math.abs(value - allOf(b)[i])));
}

function signFaults(sign: SignName | undefined, run: ShownRun, unknowns: Unknowns): string[] {
  const isSeen = sign === undefined || isCertainSign(run, { seen: sign }, 'seen', unknowns);
  return isSeen ? [] : [`the run does not show ${sign}`];
}

function holdFaults(
  holds: NonNullable<RunBasis['holds']>,
  run: ShownRun,
  unknowns: Unknowns
): string[] {
  return Object.entries(holds).flatMap(([name, [low, high]]) => {
    const { nominal, corners } = measured(run, name as MeasureName, unknowns);
    const beyond = [nominal, ...corners].filter((value) => value < low || value > high);
    const figures = beyond.map((value) => value.toFixed(3)).join(', ');
    return beyond.length === 0 ? [] : [`${name} is ${figures}, not ${low} to ${high}`];
  });
}
