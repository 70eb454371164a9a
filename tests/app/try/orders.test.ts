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
  // The water of a drill is no order.
  expect(ordersOf('20 ft of water. Drag the jig 1 ft in about 2 seconds. Keep it down.')).toEqual([
    'Drag the jig 1 ft in about 2 seconds.',
    'Keep it down. 20 ft of water.'
  ]);
});

const sorted = (text: string) => text.trim().split(' ').sort();

test('nothing of any lesson’s task is lost, in either unit', () => {
  for (const { ask } of loadLessons().flatMap(({ challenges }) => challenges))
    for (const units of ['imperial', 'metric'] as const) {
      const task = inUnits(ask, units);
      expect(sorted(ordersOf(task).join(' '))).toEqual(sorted(task));
    }
});
