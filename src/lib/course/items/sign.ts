import { simulateScenario, type Result } from '../../model';
import type { ShownRun } from '../lesson';
import type { Draft } from './generator';
import type { ItemOption } from './item';
import { cornersFor, scenarioOf, type Unknowns } from './measure';

/** A bait this far off the bottom has left it, and one this close has not, m. */
const LIFTED_M = 0.05;
const DOWN_M = 0.02;

/** What a run can be seen to have done. No two of those set against each other hold of one run. */
export const SIGNS: Record<string, (result: Result) => boolean> = {
  knocks: ({ events }) => count(events, 'stone') >= 3 && count(events, 'stem slips') === 0,
  springs: ({ events }) => lateSlips(events) >= 2 && count(events, 'stone') === 0,
  smooth: ({ events }) => count(events, 'stone') === 0 && lateSlips(events) === 0,
  lifted: ({ peak_height_m }) => peak_height_m > LIFTED_M,
  'stayed down': ({ peak_height_m, travel_m }) => peak_height_m < DOWN_M && travel_m > 0.15,
  'hardly moved': ({ peak_height_m, travel_m }) => peak_height_m < DOWN_M && travel_m <= 0.15,
  'one hop': ({ hops }) => highHops(hops) === 1,
  'two hops': ({ hops }) => highHops(hops) === 2,
  'three hops': ({ hops }) => highHops(hops) === 3,
  bite: ({ events }) => count(events, 'bite') > 0,
  quiet: ({ events }) => count(events, 'bite') + count(events, 'stone') === 0
};

function count(events: Result['events'], kind: string): number {
  return events.filter((event) => event.kind === kind).length;
}

/** Stems that let go while the bait was drawn along, and not as it was laid down. */
function lateSlips(events: Result['events']): number {
  return events.filter(({ kind, t_s }) => kind === 'stem slips' && t_s > 0.1).length;
}

function highHops(hops: Result['hops']): number {
  return hops.filter(({ height_m }) => height_m > LIFTED_M).length;
}

export interface SignOption extends ItemOption {
  /** Name of what it claims of the run. */
  sign: string;
}

interface Wanted {
  ask: string;
  caption: string;
  run: ShownRun;
  shows: NonNullable<Draft['shows']>;
  options: readonly SignOption[];
  key: string;
  unknowns?: Unknowns;
  explain: string;
}

/** Which of these was it? Null unless the run shows the key's sign alone, whatever is unknown. */
export function recognise(wanted: Wanted): Draft | null {
  const { run, options, key, unknowns = 'slack and drag', ask, caption, explain, shows } = wanted;
  const signs = Object.fromEntries(options.map(({ id, sign }) => [id, sign]));
  if (!isCertain(run, signs, key, unknowns)) return null;
  return {
    ask,
    explain,
    shows,
    answer: {
      form: 'choose',
      options: options.map(({ id, says, reply }) => ({ id, says, reply })),
      key
    },
    evidence: { is: 'sign', signs, unknowns },
    cases: [{ caption, run }]
  };
}

export function isCertain(
  run: ShownRun,
  signs: Record<string, string>,
  key: string,
  unknowns: Unknowns
): boolean {
  const scenario = scenarioOf(run);
  return [scenario, ...cornersFor(scenario, unknowns)].every((one) => {
    const result = simulateScenario(one);
    return Object.entries(signs).every(([id, sign]) => SIGNS[sign](result) === (id === key));
  });
}
