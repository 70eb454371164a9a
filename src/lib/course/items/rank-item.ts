import { formatShare, type Unknowns } from '../../scoring';
import type { ShownRun } from '../lesson';
import { MEASURES, type MeasureName } from './figures';
import type { ItemDraft } from './generator';
import { isAbove, measured, nominalOf, type RunMeasures } from './measure';
import { lengthToken, timeToken } from './draw';

export interface Contender {
  id: string;
  says: string;
  run: ShownRun;
  /** Why it is not the one, to whoever chooses it; what it came to is added. */
  reply?: string;
}

interface Wanted {
  ask: string;
  measure: MeasureName;
  unknowns?: Unknowns;
  contenders: readonly Contender[];
  explain: string;
}

interface Ranked extends Contender {
  measured: RunMeasures;
}

/** What a move does, before how much of it. */
const DOES: Readonly<Record<MeasureName, string>> = {
  travel_m: 'moves it',
  peak_height_m: 'lifts it',
  contact: 'keeps bottom for',
  fall_s: 'takes',
  airborne_s: 'stays up for',
  pull_N: 'pulls'
};

/** Things to be put in order, most first. Null where the model is not sure of it. */
export function orderBy(
  wanted: Wanted & { rule: string; right: string; reversed: string; other: string }
): ItemDraft | null {
  const ranked = rankedOf(wanted);
  if (ranked === null) return null;
  const { rule, right, reversed, other, contenders } = wanted;
  const things = contenders.map(({ id, says }) => ({ id, says }));
  const key = ranked.map(({ id }) => id);
  return {
    ...draftOf(wanted, ranked),
    answer: { form: 'order', rule, things, key, right, reversed, other }
  };
}

/** Which does it most, or least? */
export function chooseBy(
  wanted: Wanted & { pick: 'most' | 'least'; right: string }
): ItemDraft | null {
  const ranked = rankedOf(wanted);
  if (ranked === null) return null;
  const { pick, right, measure, contenders } = wanted;
  const best = pick === 'most' ? ranked[0] : ranked[ranked.length - 1];
  const cameTo = (id: string) =>
    written(ranked.find((one) => one.id === id)?.measured.nominal ?? NaN, measure);
  const options = contenders.map(({ id, says, reply = '' }) => ({
    id,
    says,
    reply:
      id === best.id
        ? right
        : `${reply} That ${DOES[measure]} ${cameTo(id)}. The right one ${DOES[measure]} ${cameTo(best.id)}.`
  }));
  const draft = draftOf(wanted, ranked);
  const evidence = { ...draft.evidence, pick };
  return { ...draft, evidence, answer: { form: 'choose', options, key: best.id } };
}

function rankedOf({ contenders, measure, unknowns = 'slack and drag' }: Wanted): Ranked[] | null {
  // Most draws fail as they are said; the corners, eight times the runs, are for those that do not.
  if (!areApart(contenders, measure)) return null;
  const ranked = contenders
    .map((one) => ({ ...one, measured: measured(one.run, measure, unknowns) }))
    .sort((a, b) => b.measured.nominal - a.measured.nominal);
  const isSure = ranked
    .slice(1)
    .every((lower, i) => isAbove(ranked[i].measured, lower.measured, measure));
  return isSure ? ranked : null;
}

function areApart(contenders: readonly Contender[], measure: MeasureName): boolean {
  // A jig that is not down yet has no time to be put in order.
  const values = contenders.map(({ run }) => nominalOf(run, measure)).sort((a, b) => b - a);
  const { least } = MEASURES[measure];
  return values.every((value, i) => Number.isFinite(value) && !(values[i - 1] - value <= least));
}

function draftOf(
  { ask, measure, unknowns = 'slack and drag', contenders, explain }: Wanted,
  ranked: readonly Ranked[]
) {
  const figures = ranked.map(
    ({ says, measured: { nominal } }) => `${says}: ${written(nominal, measure)}`
  );
  const ids = contenders.map(({ id }) => id);
  return {
    ask,
    explain: `${explain} In the model: ${figures.join('; ')}.`,
    evidence: { is: 'rank', measure, unknowns, ids } as const,
    cases: contenders.map(({ says, run }) => ({ caption: says, run }))
  };
}

function written(value: number, measure: MeasureName): string {
  const { quantity } = MEASURES[measure];
  if (quantity === 'time') return timeToken(value);
  return quantity === 'share' ? formatShare(value) : lengthToken(value);
}
