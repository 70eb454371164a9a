import { expect, test } from 'vitest';
import { itemOf } from '../../../src/lib/course/items';
import { QuizRun } from '../../../src/lib/app/quiz/quiz-run.svelte';
import { QUESTIONS } from '../../../src/lib/app/quiz/questions';

// Written ones: the model has nothing to work out for them.
const items = QUESTIONS.filter(({ lesson }) => lesson === 'safety').slice(0, 3);
const NAMES = items.map(({ item }) => item);

test('the next question is worked out while one is read and answered, and once', async () => {
  expect(items).toHaveLength(3);
  const asked: string[] = [];
  const set = { items, due: 0, missed: 0, fresh: items.length };
  const seedOf = (item: string) => 1 + NAMES.indexOf(item);
  const run = new QuizRun({ answered: () => {} }, set, seedOf, ({ item, seed }) => {
    asked.push(item);
    return Promise.resolve(itemOf(item, seed));
  });
  await expect.poll(() => run.stage).toBe('asking');
  expect(asked).toEqual(NAMES.slice(0, 2));
  run.next();
  expect(asked).toEqual(NAMES.slice(0, 2));
  await expect.poll(() => run.item?.source).toBe(NAMES[1]);
  expect(asked).toEqual(NAMES);
  expect(run.seed).toBe(2);
});
