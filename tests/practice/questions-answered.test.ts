import { expect, test } from 'vitest';
import { answeredToday } from '../../src/lib/practice';
import type { LearnerRecord } from '../../src/lib/wire';

type Answer = LearnerRecord['answers'][number];
const answer = (at: string, right: boolean, item = 'mark-drag', seed = 1) =>
  ({ at, right, item, seed }) as Answer;

test('what was answered today before a reload counts, what was answered before today does not', () => {
  const answers = [
    answer('1', true),
    answer('1', false, 'old'),
    answer('2', true),
    answer('2', false, 'near-or-far', 7),
    answer('2', true)
  ];
  const days = { today: 2, of: Number };
  const missed = [{ item: 'near-or-far', seed: 7 }];
  expect(answeredToday({ answers }, days)).toEqual({ count: 3, right: 2, missed });
});
