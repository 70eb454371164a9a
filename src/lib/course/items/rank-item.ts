import { formatShare, type Unknowns } from '../../scoring';
import type { ShownRun } from '../lesson';
import { MEASURES, type MeasureName } from './measures';
import type { ItemDraft } from './generator';
import { areFarApart, measured, nominalOf, type RunMeasures } from './measure';
import { lengthToken, timeToken } from './draw';

export interface Contender {
  id: string;
  says: string;
  run: ShownRun;
  /** The numbers that are read of it, the same kind in the same place: none of them may give the order away. */
  printed?: readonly number[];
}

/** One of those to choose among. */
export interface Candidate extends Contender {
  /** Why it is not the one, beside the one that is, to whoever chooses it: what no other one hears. */
  reply: (best: string) => string;
}

interface Wanted<T extends Contender = Contender> {
  ask: string;
  measure: MeasureName;
  unknowns?: Unknowns;
  contenders: readonly T[];
  explain: string;
}

interface Ranked extends Contender {
  measured: RunMeasures;
}

/** Things to be put in order, most first. Null where the model is not sure of it. */
export function orderBy(
  wanted: Wanted & { rule: string; right: string; reversed: string; other: string }
): ItemDraft | null {
  const ranked = rankedOf(wanted);
  if (ranked === null) return null;
  const { rule, right, reversed, other, contenders } = wanted;
  const key = ranked.map(({ id }) => id);
  const things = outOfOrder(
    contenders.map(({ id, says }) => ({ id, says })),
    key
  );
  return {
    ...draftOf(wanted, ranked, 'in order'),
    answer: { form: 'order', rule, things, key, right, reversed, other }
  };
}

/** As they came, but never in the order that is asked for: who moves nothing has put nothing in order. */
function outOfOrder<T extends { id: string }>(things: T[], key: readonly string[]): T[] {
  const [first, ...others] = things;
  return things.every(({ id }, i) => id === key[i]) ? [...others, first] : things;
}

/** Which does it most, or least? */
export function chooseBy(
  wanted: Wanted<Candidate> & { pick: 'most' | 'least'; right: string }
): ItemDraft | null {
  const ranked = rankedOf(wanted, wanted.pick);
  if (ranked === null) return null;
  const { pick, right, contenders } = wanted;
  const best = pick === 'most' ? ranked[0] : ranked[ranked.length - 1];
  const options = contenders.map(({ id, says, reply }) => ({
    id,
    says,
    reply: id === best.id ? right : reply(best.id)
  }));
  const draft = draftOf(wanted, ranked);
  const evidence = { ...draft.evidence, pick };
  return { ...draft, evidence, answer: { form: 'choose', options, key: best.id } };
}

function rankedOf(
  { contenders, measure, unknowns = 'slack and drag' }: Wanted,
  pick?: 'most' | 'least'
): Ranked[] | null {
  // Most draws fail as they are said; the corners, eight times the runs, are for those that do not.
  const asSaid = contenders
    .map(({ run, printed = [] }) => ({
      ...{ nominal: nominalOf(run, measure), corners: [], band: 0 },
      printed
    }))
    .sort((a, b) => b.nominal - a.nominal);
  // A jig that is not down yet has no time to be put in order.
  const isDone = asSaid.every(({ nominal }) => Number.isFinite(nominal));
  if (!isDone || !areFarApart(asSaid, measure, pick)) return null;
  if (
    standsInPrint(
      asSaid.map(({ printed }) => printed),
      pick
    )
  )
    return null;
  const ranked = contenders
    .map((one) => ({ ...one, measured: measured(one.run, measure, unknowns) }))
    .sort((a, b) => b.measured.nominal - a.measured.nominal);
  const all = ranked.map((one) => one.measured);
  return areFarApart(all, measure, pick) ? ranked : null;
}

/**
 * Whether the answer can be read off the numbers, most first: one kind of them rises or falls all along the
 * row, or the one asked for is at the same end of every kind.
 */
function standsInPrint(rows: readonly (readonly number[])[], pick?: 'most' | 'least'): boolean {
  const columns = rows[0].map((_, c) => rows.map((row) => row[c]));
  if (columns.length === 0) return false;
  if (pick === undefined) return columns.some(isMonotone);
  return columns.every((column) => {
    const [best, ...others] = pick === 'least' ? [...column].reverse() : column;
    return others.every((one) => one <= best) || others.every((one) => one >= best);
  });
}

function isMonotone(column: readonly number[]): boolean {
  const steps = column.slice(1).map((value, i) => Math.sign(value - column[i]));
  return steps[0] !== 0 && steps.every((step) => step === steps[0]);
}

function draftOf(
  { ask, measure, unknowns = 'slack and drag', contenders, explain }: Wanted,
  ranked: readonly Ranked[],
  stand?: 'in order'
) {
  // No number of a lift is told: on half of it guides and model differ (docs/decisions).
  const told = contenders.some(({ run }) => run.plane === 'lift') ? [] : ranked;
  const figures = told.map(({ says, measured: { nominal } }) => {
    const came = written(nominal, measure);
    // Beside things that stand in this order already their names are not said twice.
    return stand ? came : `${says}: ${came}`;
  });
  const ids = contenders.map(({ id }) => id);
  return {
    ask,
    explain: figures.length
      ? `${explain} In the model: ${figures.join(stand ? ', then ' : '; ')}.`
      : explain,
    evidence: { is: 'rank', measure, unknowns, ids } as const,
    cases: contenders.map(({ says, run }) => ({ caption: says, run }))
  };
}

function written(value: number, measure: MeasureName): string {
  const { quantity } = MEASURES[measure];
  if (quantity === 'time') return timeToken(value);
  return quantity === 'share' ? formatShare(value) : lengthToken(value);
}
