import { expect, test } from 'vitest';
import { judgeAnswer } from '../../src/lib/course/items';
import type { MarkAnswer } from '../../src/lib/course/items/item';

/** Two feet are right; three are what the tip went. */
const answer: MarkAnswer = {
  form: 'mark',
  quantity: 'length',
  key: 0.61,
  band: 0.08,
  least: 0,
  most: 2.4,
  errors: [
    { id: 'tip', value: 0.91, reply: 'That’s how far the tip went.' },
    { id: 'half', value: 0.3, reply: 'Water doesn’t take half of it.' }
  ],
  right: 'Right.',
  other: 'Start from the tip.'
};

test.each([
  [0.61, true, 'Right.'],
  [0.68, true, 'Right.'],
  [0.95, false, 'That’s how far the tip went.'],
  [0.25, false, 'Water doesn’t take half of it.'],
  [1.5, false, 'Start from the tip.'],
  [0.05, false, 'Start from the tip.']
])('a mark at %f m: right is %s, and the reply is of that place', (given, right, reply) => {
  expect(judgeAnswer(answer, given)).toEqual({ right, reply });
});
