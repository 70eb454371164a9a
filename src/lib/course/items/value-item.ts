import type { Random } from '../../model';
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
  /** What the rule of the lesson comes to, as a hand works it out: that is right, too. */
  byRule?: number;
  /** What the words allow either way, where that is more than the model leaves open. */
  giveOrTake?: number;
  /** Whether the model leaves open a share of each value, as of a fall: shorter ones then differ by less. */
  isByShare?: boolean;
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
  if (new Set(options.map(({ says }) => says)).size < options.length) return null;
  return { ...draft, answer: { form: 'choose', options, key: 'right', band } };
}

/**
 * A length is marked where what the model leaves open is at most a third of it: of a wider band nobody
 * learns a number. Of a fall it is wider, as skirts differ by a factor of two, and the words say so.
 */
const LEAST_BANDS = { length: 3, time: 2.5 } as const;
/**
 * The right one stands at any place of a ruler's length from this share on: a ruler is about twice as long
 * as what is marked on it. Short rulers have wide bands, so places far along are drawn less often, as many
 * times as bands are wider there: then none of them is right more often than another.
 */
const LEAST_SHARE = 0.2;
/** Beyond the right one a ruler goes on for this many bands at least. */
const BANDS_BEYOND = 1.25;
/** Rulers end at a whole one of these: half a foot, two seconds. */
const RULER_STEPS = { length: 0.1524, time: 2 } as const;

/** A place to be marked on a ruler, of whose length the right one has a share that is drawn. */
export function markValue(wanted: Wanted & { other: string; random: Random }): ItemDraft | null {
  const { key, band, draft, wrong } = begun(wanted);
  const { quantity } = MEASURES[wanted.measure];
  if (!Number.isFinite(key) || quantity === 'share' || quantity === 'pull') return null;
  if (key < LEAST_BANDS[quantity] * band) return null;
  const { right, other, random } = wanted;
  const greatest = key / (key + BANDS_BEYOND * band);
  const share = LEAST_SHARE * (greatest / LEAST_SHARE) ** random();
  const step = RULER_STEPS[quantity];
  const most = Math.ceil(key / share / step) * step;
  const errors = wrong.filter(({ value }) => value <= most);
  return {
    ...draft,
    answer: { form: 'mark', quantity, key, band, least: 0, most, right, errors, other }
  };
}

function begun(wanted: Wanted) {
  const { ask, caption, run, measure, unknowns = 'slack and drag', explain } = wanted;
  const { nominal: key, band: modelBand } = measured(run, measure, unknowns);
  const byRule = wanted.byRule ?? key;
  const band = Math.max(modelBand, wanted.giveOrTake ?? 0) + Math.abs(key - byRule);
  const bandAt = (value: number) => (wanted.isByShare ? band * Math.min(1, value / key) : band);
  const draft = {
    ask,
    explain,
    evidence: { is: 'value', measure, unknowns } as const,
    cases: [{ caption, run }]
  };
  const wrong = Number.isFinite(key) ? clearlyWrong(wanted.errors(key), [key, byRule], bandAt) : [];
  return { key, band, draft, wrong };
}

/** Those that no reading of the unknowns and no rule makes right, and that differ from one another. */
function clearlyWrong(
  errors: readonly Wrong[],
  right: readonly number[],
  bandAt: (value: number) => number
): Wrong[] {
  const kept: Wrong[] = [];
  for (const error of errors) {
    const isFar = [...right, ...kept.map(({ value }) => value)].every(
      (other) => Math.abs(error.value - other) > bandAt(Math.max(error.value, other))
    );
    if (error.value > 0 && isFar) kept.push(error);
  }
  return kept;
}
