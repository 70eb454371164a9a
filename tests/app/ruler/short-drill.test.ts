import { expect, test } from 'vitest';
import { nextShortTry } from '../../../src/lib/app/ruler/next-try';
import { onMarkText } from '../../../src/lib/app/ruler/standing';
import type { StoredTry } from '../../../src/lib/wire';

const made = (marks: number, i: number) =>
  ({ challenge: `drag-unseen-0-${i + 1}`, phase: 'unseen', marks }) as StoredTry;

test('six hidden tries are told together once all are made', () => {
  const tries = [40, 100, 80, 75, 100, 92].map(made);
  const { good, challenge } = nextShortTry({ id: 'drag' }, tries);
  expect(challenge).toBe('');
  expect(onMarkText(good, 6)).toBe('5 of 6 on the mark.');
  expect(onMarkText(0, 6)).toBe('None of 6 on the mark.');
});

test('tries made later do not count to the six', () => {
  const tries = [40, 100, 80, 75, 100, 92, 100, 100].map(made);
  expect(nextShortTry({ id: 'drag' }, tries).good).toBe(5);
});
