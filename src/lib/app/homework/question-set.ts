import { drawCheckedSeed, questionsAbout, SOURCES, type Source } from '$lib/course/items';
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
 * question comes twice, nor with a twin, and all were checked. `random` draws from 0 to below 1.
 */
export function questionsLeft(
  objective: string,
  answers: readonly QuestionKey[],
  of: number,
  random: () => number
): { set: DailySet<Source>; nextSeed: () => number } {
  const asked = askedAbout(objective, answers);
  const all = sourcesOf(objective);
  const made = asked.flatMap(({ item }) => all.find((one) => one.item === item) ?? []);
  const items: Source[] = [];
  while (items.length < questionsAbout(objective, of) - asked.length) {
    const next = nextOf(all, [...made, ...items], random);
    if (!next) break;
    items.push(next);
  }
  return {
    set: { items, due: 0, missed: 0, fresh: items.length },
    nextSeed: unusedSeeds(asked, random)
  };
}

/** One of those asked least so far; a generated one of twins stands for both, a written one for itself, once. */
function nextOf(all: readonly Source[], asked: readonly Source[], random: () => number) {
  const times = ({ item }: Source) => asked.filter((one) => one.item === item).length;
  const isNew = ({ thing }: Source) => asked.every((one) => one.thing !== thing);
  const open = all.filter((one) => isNew(one) || (one.isGenerated && times(one) > 0));
  const least = Math.min(...open.map(times));
  const next = open.filter((one) => times(one) === least);
  return next[Math.floor(random() * next.length)];
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
