import type { Askable } from './daily-set';
import type { Days } from './days';
import { memoriesOf, recall, type Memory } from './memory';
import type { StoredAnswer } from '../../wire';

/** Where a learner stands with one objective. */
export interface ObjectiveStanding {
  objective: string;
  answers: number;
  /** Of the answers. */
  right: number;
  /** Of its items, how many have been asked. */
  asked: number;
  of: number;
  /**
   * Mean chance of still knowing it, over the items that were once answered right; null before that,
   * since what was never known cannot be forgotten. As of today, or of the day after the answer: what was told a minute ago is in everybody's head.
   */
  known: number | null;
  /** Least and most that the answers so far leave open (Wilson 1927, 95 %), of the share right. */
  between: [number, number] | null;
  /** Days until the first of its items is due; null before the first answer. */
  fades_in_days: number | null;
}

/** By objective, in the order of `all`. */
export function standingOf(
  all: readonly Askable[],
  answers: readonly StoredAnswer[],
  days: Days
): ObjectiveStanding[] {
  const { today } = days;
  const memories = memoriesOf(answers, days.of);
  const objectives = [...new Set(all.map(({ objective }) => objective))];
  return objectives.map((objective) => {
    const items = all.filter((one) => one.objective === objective).map(({ item }) => item);
    const kept = items.flatMap((item) => memories.get(item) ?? []);
    const given = answers.filter(({ item }) => items.includes(item));
    const hits = given.filter((one) => one.right);
    const right = hits.length;
    const counts = {
      objective,
      answers: given.length,
      right,
      asked: kept.length,
      of: items.length
    };
    if (kept.length === 0) return { ...counts, known: null, between: null, fades_in_days: null };
    const known = kept.filter(({ item }) => hits.some((one) => one.item === item));
    return {
      ...counts,
      known: meanRecall(known, today),
      between: wilson(right, given.length),
      fades_in_days: firstDue(kept, today)
    };
  });
}

function meanRecall(known: readonly Memory[], today: number): number | null {
  if (known.length === 0) return null;
  const shares = known.map((memory) => recall(memory, Math.max(today, memory.last_day + 1)));
  return shares.reduce((sum, share) => sum + share, 0) / known.length;
}

function firstDue(kept: readonly Memory[], today: number): number {
  return Math.max(0, Math.min(...kept.map(({ due_day }) => due_day)) - today);
}

/** Normal quantile for 95 % both ways. */
const Z = 1.96;

function wilson(right: number, of: number): [number, number] {
  const share = right / of;
  const middle = (share + (Z * Z) / (2 * of)) / (1 + (Z * Z) / of);
  const half =
    (Z / (1 + (Z * Z) / of)) * Math.sqrt((share * (1 - share)) / of + (Z * Z) / (4 * of * of));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
