import { expect, test } from 'vitest';
import { allLessons } from '../../src/lib/course';
import { itemOf, lessonOf, SOURCES } from '../../src/lib/course/items';

/** What words of a move mean, and the lesson in which it is first made. */
const TAUGHT: readonly (readonly [RegExp, string])[] = [
  [/\d o’clock|hour of lift|hour on the clock|lifts? (?:on|each|from)/, 'the-clock'],
  [/\bhops?\b|\bhopped\b/, 'hops'],
  [/\bstrokes?\b/, 'stroke-and-fall']
];
/** More than one, since what is asked may differ from one to the next. */
const SEEDS = [1, 2, 3];

const orders = new Map(allLessons().map(({ id, order }) => [id, order]));
const orderOf = (lesson: string) => orders.get(lesson) ?? 0;

test.each(SOURCES.map((one) => [one.item, one] as const))(
  '%s: asks for no move before the lesson that teaches it',
  (item, { objective, isGenerated }) => {
    const asked = (isGenerated ? SEEDS : [1]).map((seed) => itemOf(item, seed).ask);
    const lesson = lessonOf(objective);
    const early = TAUGHT.filter(
      ([words, taught]) => asked.some((ask) => words.test(ask)) && orderOf(lesson) < orderOf(taught)
    );
    expect(early.map(([, taught]) => `${lesson}, taught in ${taught}: ${asked[0]}`)).toEqual([]);
  }
);
