import type { Item } from '$lib/course/items';
import { inUnits, type Units } from '$lib/scoring';
import type { MakeItem } from './quiz-run.svelte';
import { answerWords } from './answer-words';

export interface Numbered {
  number: number;
  item: Item;
}

/** A sheet's questions as they are made, one after the other; what can be asked is fetched for it. */
export async function* questionsOn(
  sheet: number,
  make: MakeItem,
  signal: AbortSignal
): AsyncGenerator<Numbered> {
  const { keysOf, questionsOnSheet } = await import('./sheet-names');
  const placed = keysOf(sheet);
  for (const [i, named] of questionsOnSheet(sheet).entries()) {
    yield { number: i + 1, item: placed(await make(named, signal)) };
  }
}

/** Which sheets share no question with this one. */
export async function sharedWithNone(sheet: number): Promise<string> {
  const { roundOf } = await import('./sheet-names');
  const [first, last] = roundOf(sheet);
  return `Sheets ${first} to ${last} share no question.`;
}

/** The letter of an option on paper. */
export function letter(i: number): string {
  return String.fromCharCode(65 + i);
}

/** The answer as it stands on the second page, before units are put in. */
export function keyWords({ answer }: Pick<Item, 'answer'>): string {
  const words = answerWords({ answer });
  if (answer.form !== 'choose') return words;
  return `${letter(answer.options.findIndex(({ id }) => id === answer.key))}, ${words}`;
}

/** A question's part of the page of answers. */
export interface SheetAnswer {
  number: number;
  key: string;
  explain: string;
  replies: { letter: string; says: string }[];
}

/** The page of answers: a sentence, or a reply, that stands on it already is not printed again. */
export function answersOn(sheet: readonly Numbered[], units: Units): SheetAnswer[] {
  const said = new Set<string>();
  const isNew = (text: string) => !said.has(text) && Boolean(said.add(text));
  return sheet.map(({ number, item }) => {
    const { answer, explain } = item;
    const sentences = inUnits(explain, units).split(/(?<=[.?!])\s+/);
    const wrong =
      answer.form === 'choose'
        ? answer.options.flatMap(({ id, reply }, i) =>
            id === answer.key ? [] : { letter: letter(i), says: inUnits(reply, units) }
          )
        : [];
    return {
      number,
      key: inUnits(keyWords(item), units),
      explain: sentences.filter(isNew).join(' '),
      replies: wrong.filter(({ says }) => isNew(says))
    };
  });
}

export const MOST_SHEETS = 999_999;

/** A seed from an address or a field: a whole number from 1 to 999,999, else 1. */
export function seedFrom(text: string | null): number {
  const read = readSeed(text ?? '');
  return 'seed' in read ? read.seed : 1;
}

/** A sheet's number as it was typed, or what is wrong with it. */
export function readSeed(text: string): { seed: number } | { fault: string } {
  const seed = Number(text);
  if (Number.isInteger(seed) && seed >= 1 && seed <= MOST_SHEETS) return { seed };
  const not = text.trim() && `, not “${text.trim()}”`;
  return { fault: `Number: type a whole number from 1 to ${MOST_SHEETS}${not}.` };
}
