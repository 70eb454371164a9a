import type { Unknowns } from '../../scoring';
import type { ShownRun } from '../lesson';
import type { MeasureName } from './measures';
import type { ItemDraft } from './generator';
import { measured, nominalOf } from './measure';

/**
 * A count within a tenth of what is asked is that count, as a voice counts; one that is off by a fifth
 * is another. Between them nothing is asked. Design values.
 */
const SAME = 0.1;
const OTHER = 0.2;

interface Wanted {
  ask: string;
  measure: MeasureName;
  unknowns: Unknowns;
  /** What was timed, and what it came to. */
  known: { caption: string; run: ShownRun; value: number };
  /** What came now. */
  given: number;
  options: readonly { id: string; says: string; reply: string; run: ShownRun }[];
  explain: string;
}

/** Which of these came to `given`, by the learner's own measure of another? Null where the model is not sure. */
export function chooseScaled(wanted: Wanted): ItemDraft | null {
  const { ask, explain, measure, unknowns, known, given, options } = wanted;
  const runs = [known.run, ...options.map(({ run }) => run)];
  const at = onlyScaled(runs, { measure, unknowns, known: known.value, given });
  if (at === null) return null;
  return {
    ask,
    explain,
    answer: {
      form: 'choose',
      options: options.map(({ id, says, reply }) => ({ id, says, reply })),
      key: options[at].id
    },
    evidence: {
      is: 'scaled',
      measure,
      unknowns,
      ids: options.map(({ id }) => id),
      known: known.value,
      given
    },
    cases: [
      { caption: known.caption, run: known.run },
      ...options.map(({ says, run }) => ({ caption: says, run }))
    ]
  };
}

/**
 * Which of the runs after the first comes to `given`, if the first came to `known`: in each corner of
 * what is unknown all change alike. Null where none does, or another might.
 */
export function onlyScaled(
  [first, ...runs]: readonly ShownRun[],
  {
    measure,
    unknowns,
    known,
    given
  }: Pick<Wanted, 'measure' | 'unknowns' | 'given'> & { known: number }
): number | null {
  const said = (run: ShownRun) => [nominalOf(run, measure)];
  const ever = (run: ShownRun) => {
    const { nominal, corners } = measured(run, measure, unknowns);
    return [nominal, ...corners];
  };
  const onlyBy = (valuesOf: typeof ever) => {
    const base = valuesOf(first);
    const ratios = runs.map((run) => valuesOf(run).map((value, i) => value / base[i]));
    return onlyNear(ratios, given / known);
  };
  // What fails as it is said fails with the corners, too, which take up to ten times the runs.
  return onlyBy(said) === null ? null : onlyBy(ever);
}

/** Which has all its ratios near the one that is asked for, the others having none near it; or null. */
function onlyNear(ratios: readonly (readonly number[])[], asked: number): number | null {
  const shares = ratios.map((all) => all.map((ratio) => Math.abs(ratio / asked - 1)));
  const right = shares.findIndex((all) => all.every((share) => share <= SAME));
  const isSure = shares.every((all, i) => i === right || all.every((share) => share >= OTHER));
  return right >= 0 && isSure ? right : null;
}
