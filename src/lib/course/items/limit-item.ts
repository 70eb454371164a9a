import { MEASURES, type MeasureName } from './figures';
import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import type { Limit } from './item';
import type { Contender } from './rank-item';
import type { Unknowns } from '../../scoring';
import { measured } from './measure';

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
export function lastWithin(wanted: Wanted): ItemDraft | null {
  const { contenders, measure, unknowns = 'slack and drag', most } = wanted;
  const sides = contenders.map(({ run }) => sideOf(run, { measure, unknowns, most }));
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

/** Which side of a limit a run is on, whatever is unknown; a bit beyond does not count as beyond. */
export function sideOf(run: ShownRun, limit: Limit): 'within' | 'beyond' | 'unsure' {
  const { nominal, corners } = measured(run, limit.measure, limit.unknowns);
  const all = [nominal, ...corners];
  if (all.every((value) => value <= limit.most)) return 'within';
  const clearly = limit.most + MEASURES[limit.measure].least;
  return all.every((value) => value > clearly) ? 'beyond' : 'unsure';
}
