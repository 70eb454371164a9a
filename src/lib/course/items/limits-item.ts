import type { ShownRun } from '../lesson';
import type { ItemDraft } from './generator';
import type { Limit } from './item';
import { sideOf } from './limit-item';

export interface Plan {
  id: string;
  says: string;
  /** A run for each limit, in their order, and what it shows. */
  runs: readonly { caption: string; run: ShownRun }[];
  /** To whoever chooses it wrongly. */
  reply: string;
}

interface Wanted {
  ask: string;
  limits: readonly Limit[];
  plans: readonly Plan[];
  right: string;
  explain: string;
}

/** The one plan that keeps within every limit. Null where the model is not sure that it is just one. */
export function onlyGood({ ask, limits, plans, right, explain }: Wanted): ItemDraft | null {
  const cases = plans.flatMap(({ runs }) => runs);
  const good = onlyWithin(
    cases.map(({ run }) => run),
    limits
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
    evidence: { is: 'limits', limits: [...limits], ids: plans.map(({ id }) => id) },
    cases
  };
}

/**
 * Which plan keeps within all limits, each other one being surely beyond one of them; null where that
 * is not so. `runs` has a run for each limit of the first plan, then of the second, and so on.
 */
export function onlyWithin(runs: readonly ShownRun[], limits: readonly Limit[]): number | null {
  const width = limits.length;
  const plans = Array.from({ length: runs.length / width }, (_, i) =>
    limits.map((limit, k) => sideOf(runs[i * width + k], limit))
  );
  const good = plans.findIndex((sides) => sides.every((side) => side === 'within'));
  const isSure = plans.every((sides, i) => i === good || sides.includes('beyond'));
  return good >= 0 && isSure ? good : null;
}
