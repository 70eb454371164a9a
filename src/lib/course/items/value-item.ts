import type { ShownRun } from '../lesson';
import { MEASURES, type MeasureName } from './measures';
import type { ItemDraft } from './generator';
import type { BeginnerError } from './item';
import type { Unknowns } from '../../scoring';
import { measured } from './measure';

interface Wanted {
  ask: string;
  caption: string;
  run: ShownRun;
  measure: MeasureName;
  unknowns?: Unknowns;
  right: string;
  explain: string;
  /** What beginners answer, as a function of the right value, dearest first. */
  errors: (key: number) => (BeginnerError & { value: number })[];
}

type Wrong = BeginnerError & { value: number };

/** A choice between three numbers, of which the model's is one. */
export function chooseValue(
  wanted: Wanted & { says: (value: number) => string }
): ItemDraft | null {
  const { key, band, draft, wrong } = begun(wanted);
  if (!Number.isFinite(key) || key <= band || wrong.length < 2) return null;
  const options = [
    { id: 'right', says: wanted.says(key), reply: wanted.right, value: key },
    ...wrong
      .slice(0, 2)
      .map(({ id, value, reply }) => ({ id, says: wanted.says(value), reply, value }))
  ];
  return { ...draft, answer: { form: 'choose', options, key: 'right', band } };
}

/** A place to be marked on a ruler. */
export function markValue(wanted: Wanted & { other: string }): ItemDraft | null {
  const { key, band, draft, wrong } = begun(wanted);
  const { quantity } = MEASURES[wanted.measure];
  if (!Number.isFinite(key) || key < 2 * band || quantity === 'share' || quantity === 'pull')
    return null;
  const step = quantity === 'length' ? 0.3048 : 5;
  const most = Math.ceil((1.6 * Math.max(key, ...wrong.map(({ value }) => value))) / step) * step;
  const { right, other } = wanted;
  return {
    ...draft,
    answer: { form: 'mark', quantity, key, band, least: 0, most, right, errors: wrong, other }
  };
}

function begun(wanted: Wanted) {
  const { ask, caption, run, measure, unknowns = 'slack and drag', explain } = wanted;
  const { nominal: key, band } = measured(run, measure, unknowns);
  const draft = {
    ask,
    explain,
    evidence: { is: 'value', measure, unknowns } as const,
    cases: [{ caption, run }]
  };
  const wrong = Number.isFinite(key) ? clearlyWrong(wanted.errors(key), key, band) : [];
  return { key, band, draft, wrong };
}

/** Those that no reading of the unknowns makes right, and that differ from one another. */
function clearlyWrong(errors: readonly Wrong[], key: number, band: number): Wrong[] {
  const kept: Wrong[] = [];
  for (const error of errors) {
    const isFar = [key, ...kept.map(({ value }) => value)].every(
      (other) => Math.abs(error.value - other) > band
    );
    if (error.value > 0 && isFar) kept.push(error);
  }
  return kept;
}
