import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import type { Limit } from './item';
import { MEASURES } from './measures';
import { measured, nominalOf } from './measure';

export interface Plan {
  id: string;
  says: string;
  /** A run for each limit, in their order, and what it shows. */
  runs: readonly { caption: string; run: ShownRun }[];
  /** To whoever chooses it wrongly. */
  reply: string;
}

/** A fall that the learner has timed: what it came to, s, and the run of it. */
interface Timed {
  caption: string;
  run: ShownRun;
  fall_s: number;
}

interface Wanted {
  ask: string;
  limits: readonly Limit[];
  plans: readonly Plan[];
  timed?: Timed;
  right: string;
  explain: string;
}

/** The one plan that keeps within every limit. Null where the model is not sure that it is just one. */
export function onlyGood({ ask, limits, plans, timed, right, explain }: Wanted): ItemDraft | null {
  const cases = [
    ...(timed ? [{ caption: timed.caption, run: timed.run }] : []),
    ...plans.flatMap(({ runs }) => runs)
  ];
  const good = onlyWithin(
    cases.map(({ run }) => run),
    limits,
    timed?.fall_s
  );
  if (good === null) return null;
  const options = plans.map(({ id, says, reply }, i) => ({
    id,
    says,
    reply: i === good ? right : reply
  }));
  return {
    ask,
    explain,
    answer: { form: 'choose', options, key: plans[good].id },
    evidence: {
      is: 'limits',
      limits: [...limits],
      ids: plans.map(({ id }) => id),
      ...(timed && { timed_s: timed.fall_s })
    },
    cases
  };
}

/**
 * Which plan keeps within all limits, each other one being surely beyond one of them; null where that
 * is not so. `runs` has a run for each limit of the first plan, then of the second, and so on; where
 * a fall was timed, its run comes before them, and what is unknown slows all falls as it slowed that.
 */
export function onlyWithin(
  runs: readonly ShownRun[],
  limits: readonly Limit[],
  timed_s?: number
): number | null {
  const [base, own] = timed_s === undefined ? [null, runs] : [runs[0], runs.slice(1)];
  const within = (valuesOf: (run: ShownRun, limit: Limit) => number[]) => {
    const timed = (limit: Limit) =>
      base !== null && limit.measure === 'fall_s'
        ? valuesOf(base, limit).map((fall_s) => (timed_s ?? 0) / fall_s)
        : [];
    const plans = Array.from({ length: own.length / limits.length }, (_, i) =>
      limits.map((limit, k) => {
        const scale = timed(limit);
        const values = valuesOf(own[i * limits.length + k], limit);
        return sideOf(
          values.map((value, c) => value * (scale[c] ?? 1)),
          limit
        );
      })
    );
    const good = plans.findIndex((sides) => sides.every((side) => side === 'within'));
    const isSure = plans.every((sides, i) => i === good || sides.includes('beyond'));
    return good >= 0 && isSure ? good : null;
  };
  // Most draws fail as they are said; the corners, eight times the runs, are for those that do not.
  return within(saidOf) === null ? null : within(allOf);
}

/** Whether all plans stay down that have to, or hop: the limit then asks nothing. */
export function liftsAlike(
  runs: readonly ShownRun[],
  limits: readonly Limit[],
  timed_s?: number
): boolean {
  const own = timed_s === undefined ? runs : runs.slice(1);
  return limits.some(
    (limit, k) =>
      limit.measure === 'peak_height_m' &&
      own.every(
        (run, i) => i % limits.length !== k || sideOf(saidOf(run, limit), limit) === 'within'
      )
  );
}

const saidOf = (run: ShownRun, { measure }: Limit): number[] => [nominalOf(run, measure)];

/** As it is said, and in every corner of what is unknown. */
function allOf(run: ShownRun, { measure, unknowns }: Limit): number[] {
  const { nominal, corners } = measured(run, measure, unknowns);
  return [nominal, ...corners];
}

/** Which side of a limit these values are on; a bit beyond does not count as beyond. */
function sideOf(values: readonly number[], { measure, least = -Infinity, most }: Limit) {
  const apart = MEASURES[measure].least;
  if (values.every((value) => value >= least && value <= most)) return 'within';
  const isOver = values.every((value) => value > most + apart);
  return isOver || values.every((value) => value < least - apart) ? 'beyond' : 'unsure';
}
