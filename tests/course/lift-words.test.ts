import { expect, test } from 'vitest';
import { liftFaults } from '../../scripts/lift-words';
import { itemOf, type ChooseAnswer } from '../../src/lib/course/items';

// `npm run check:items` looks at every question that may be drawn.
test('figures of a ranked lift are found out: guides see half of the model’s', () => {
  const item = itemOf('order-lines-hop', 1);
  expect(item.cases.some(({ run }) => run.plane === 'lift')).toBe(true);
  expect(liftFaults(item)).toEqual([]);
  const explain = `${item.explain} In the model: {length:0.3}.`;
  expect(liftFaults({ ...item, explain })).toEqual(['figures of a lift are told']);
});

test('a move that went higher, and is called the lower one, is found out', () => {
  const asksLowest = (seed: number) =>
    itemOf('sweep-or-lift', seed).ask.includes('least off bottom');
  const seed = [1, 2, 3, 4, 5, 6].find(asksLowest);
  if (!seed) throw new Error('none asks for the lowest');
  const item = itemOf('sweep-or-lift', seed);
  expect(liftFaults(item)).toEqual([]);
  const answer = item.answer as ChooseAnswer;
  const options = answer.options.map((one) => ({ ...one, reply: 'This one lifts it less.' }));
  expect(liftFaults({ ...item, answer: { ...answer, options } })).toHaveLength(options.length - 1);
});
