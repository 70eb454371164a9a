/** Whether a question asks for a move that only a later lesson teaches. */
import { allLessons } from '../src/lib/course';
import { lessonOf, type Item } from '../src/lib/course/items';

/** What words of a move mean, and the lesson in which it is first made. */
const TAUGHT: readonly (readonly [RegExp, string])[] = [
  [/\d o’clock|hour of lift|hour on the clock|lifts? (?:on|each|from)/, 'the-clock'],
  [/\bhops?\b|\bhopped\b/, 'hops'],
  [/\bstrokes?\b/, 'stroke-and-fall']
];

const orders = new Map(allLessons().map(({ id, order }) => [id, order]));
const orderOf = (lesson: string) => orders.get(lesson) ?? 0;

/** What is wrong with an item that asks for a move before the lesson that teaches it. */
export function earlyFaults({ objective, ask }: Pick<Item, 'objective' | 'ask'>): string[] {
  const lesson = lessonOf(objective);
  return TAUGHT.filter(
    ([words, taught]) => words.test(ask) && orderOf(lesson) < orderOf(taught)
  ).map(([, taught]) => `${lesson} asks for what ${taught} teaches: ${ask}`);
}
