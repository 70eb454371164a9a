import { SOURCES, type Item } from '$lib/course/items';
import { interleaved } from '$lib/practice';
import { seededRandom } from '$lib/model';
import type { MakeItem } from './quiz-run.svelte';
import { answerWords } from './answer-words';

/** Questions on one page of paper. */
export const SHEET_SIZE = 10;
/** What a sheet of paper cannot do: play a retrieve or a sound. */
const ON_PAPER = ['choose', 'mark', 'order', 'trace'];

export interface Numbered {
  number: number;
  item: Item;
}

/** Names of the questions of a sheet, the same for the same seed. */
export function namesOn(seed: number): string[] {
  const random = seededRandom(seed);
  const drawn = SOURCES.filter(({ kind }) => ON_PAPER.includes(kind))
    .map((one) => ({ one, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ one }) => one)
    .filter(({ thing }, i, all) => all.findIndex((other) => other.thing === thing) === i);
  const each = (isGenerated: boolean) => drawn.filter((one) => one.isGenerated === isGenerated);
  const half = SHEET_SIZE / 2;
  return interleaved([...each(true).slice(0, half), ...each(false).slice(0, half)]).map(
    ({ item }) => item
  );
}

/** A sheet's questions as they are made, one after the other. Its seed is that of its questions, too. */
export async function* questionsOn(
  seed: number,
  make: MakeItem,
  signal: AbortSignal
): AsyncGenerator<Numbered> {
  for (const [i, item] of namesOn(seed).entries()) {
    yield { number: i + 1, item: await make({ item, seed }, signal) };
  }
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
