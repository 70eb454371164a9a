import type { Item } from '$lib/course/items';
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
  const { questionsOnSheet } = await import('./sheet-names');
  for (const [i, named] of questionsOnSheet(sheet).entries()) {
    yield { number: i + 1, item: await make(named, signal) };
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

/** A seed from an address or a field: a whole number from 1 to 999,999, else 1. */
export function seedFrom(text: string | null): number {
  const seed = Number(text);
  return Number.isInteger(seed) && seed >= 1 && seed <= 999_999 ? seed : 1;
}
