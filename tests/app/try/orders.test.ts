import { expect, test } from 'vitest';
import { ordersOf } from '../../../src/lib/app/try/orders';
import { loadLessons } from '../../../src/lib/course';
import { inUnits } from '../../../src/lib/scoring';

test('a task stands out by its first order alone', () => {
  expect(ordersOf('Drag it 1.5 ft, within 2 in. Turn back. Reel.')).toEqual([
    'Drag it 1.5 ft, within 2 in.',
    'Turn back. Reel.'
  ]);
  expect(ordersOf('Drag it.')).toEqual(['Drag it.', '']);
  expect(ordersOf('')).toEqual(['', '']);
});

test('nothing of any lesson’s task is lost, in either unit', () => {
  for (const { ask } of loadLessons().flatMap(({ challenges }) => challenges))
    for (const units of ['imperial', 'metric'] as const) {
      const task = inUnits(ask, units);
      expect(ordersOf(task).join(' ').trim()).toBe(task);
    }
});
