import { drawCheckedSeed, SOURCES, type Source } from '$lib/course/items';
import { type DailySet } from '$lib/practice';
import type { StoredAnswer } from '$lib/wire';

/** What of an answer tells which question it was. */
export type QuestionKey = Pick<StoredAnswer, 'item' | 'seed'>;

/** Those of some answers that were to questions about this. */
export function askedAbout<A extends QuestionKey>(objective: string, answers: readonly A[]): A[] {
  const own = new Set(sourcesOf(objective).map(({ item }) => item));
  return answers.filter(({ item }) => own.has(item));
}

/**
 * What is still to ask about an objective, and the seeds for it: what was asked least comes first, no
 * seed comes twice, and all were checked. `random` draws from 0 to below 1.
 */
export function questionsLeft(
  objective: string,
  answers: readonly QuestionKey[],
  of: number,
  random: () => number
): { set: DailySet<Source>; nextSeed: () => number } {
  const asked = askedAbout(objective, answers);
  const times = new Map(sourcesOf(objective).map(({ item }) => [item, 0]));
  const count = ({ item }: { item: string }) => times.set(item, (times.get(item) ?? 0) + 1);
  asked.forEach(count);
  const items: Source[] = [];
  while (items.length < of - asked.length) {
    const least = Math.min(...times.values());
    const open = sourcesOf(objective).filter(({ item }) => times.get(item) === least);
    const next = open[Math.floor(random() * open.length)];
    items.push(next);
    count(next);
  }
  return {
    set: { items, due: 0, missed: 0, fresh: items.length },
    nextSeed: unusedSeeds(asked, random)
  };
}

function sourcesOf(objective: string): Source[] {
  return SOURCES.filter((one) => one.objective === objective);
}

function unusedSeeds(asked: readonly QuestionKey[], random: () => number): () => number {
  const used = new Set(asked.map(({ seed }) => seed));
  return () => {
    const seed = drawCheckedSeed(random, used);
    used.add(seed);
    return seed;
  };
}
