import { expect, test } from 'vitest';
import { taughtIn } from '../../../src/lib/app/quiz/wanted';
import { allLessons } from '../../../src/lib/course';

test('a question says which lesson teaches what it asks', () => {
  expect(taughtIn('order-weights-fall')).toBe('Lesson 5');
  expect(taughtIn('order-weights-hop')).toBe('Lesson 10');
  expect(taughtIn('safety-thunder')).toBe(allLessons()[0].title);
  expect(taughtIn('gone')).toBe('');
});
