import { MEASURES, type MeasureName } from './figures';
import type { Draft } from './generator';
import type { Contender } from './rank-item';
import { measured, type Unknowns } from './measure';

interface Wanted {
  ask: string;
  measure: MeasureName;
  unknowns?: Unknowns;
  /** The bait stays within this, SI. */
  most: number;
  /** From surely within to surely beyond. */
  contenders: readonly Contender[];
  right: string;
  /** To those who stay further within than they need, and to those who go beyond. */
  timid: string;
  bold: string;
  explain: string;
}

/** The last of a row that still keeps within a limit. Null where the model is not sure which. */
export function lastWithin(wanted: Wanted): Draft | null {
  const { contenders, measure, unknowns = 'slack and drag', most } = wanted;
  const sides = contenders.map(({ run }) => sideOf(run, measure, unknowns, most));
  const beyond = sides.indexOf('beyond');
  if (beyond < 1 || sides.some((side, i) => side !== (i < beyond ? 'within' : 'beyond')))
    return null;
  const key = contenders[beyond - 1].id;
  const reply = (i: number) => (i < beyond ? wanted.timid : wanted.bold);
  const options = contenders.map(({ id, says }, i) => ({
    id,
    says,
    reply: id === key ? wanted.right : reply(i)
  }));
  return {
    ask: wanted.ask,
    explain: wanted.explain,
    answer: { form: 'choose', options, key },
    evidence: { is: 'limit', measure, unknowns, ids: contenders.map(({ id }) => id), most },
    cases: contenders.map(({ says, run }) => ({ caption: says, run }))
  };
}

function sideOf(run: Contender['run'], measure: MeasureName, unknowns: Unknowns, most: number) {
  const { nominal, corners } = measured(run, measure, unknowns);
  const all = [nominal, ...corners];
  if (all.every((value) => value <= most)) return 'within';
  return all.every((value) => value > most + MEASURES[measure].least) ? 'beyond' : 'unsure';
}
