import { expect, test } from 'vitest';
import { ordersOf } from '../../../src/lib/app/try/orders';
import { loadLessons } from '../../../src/lib/course';
import { inUnits } from '../../../src/lib/scoring';

test('a task stands out by its first order alone', () => {
  expect(ordersOf('Drag it 1.5 ft, within 2 in. Turn back. Reel.')).toEqual([
    '',
    'Drag it 1.5 ft, within 2 in.',
    'Turn back. Reel.'
  ]);
  expect(ordersOf('Drag it.')).toEqual(['', 'Drag it.', '']);
  expect(ordersOf('')).toEqual(['', '', '']);
  // The water of a drill is no order.
  expect(ordersOf('20 ft of water. Drag the jig 1 ft in about 2 seconds. Keep it down.')).toEqual([
    '',
    'Drag the jig 1 ft in about 2 seconds.',
    'Keep it down. 20 ft of water.'
  ]);
});

test.each([
  ['15 ft deep.', 'Drag the jig 2 ft.', ''],
  ['There’s slack in the line.', 'Move the jig 1 ft anyway, within 2 in.', ''],
  ['', 'In 10 ft, snap the jig 2 to 5 ft up.', 'Lower the rod with it as it falls.'],
  ['80 °F, fish on the chase.', 'Two strokes, 2 to 5 ft high.', 'Reel up the slack between them.'],
  ['5/8 oz, free spool. They stop: it’s down.', 'Then lower the rod.', ''],
  ['18 in of slack.', 'When the fish taps, reel down until you feel the jig, then sweep.', ''],
  ['In 10 ft, reel engaged.', 'Follow the falling jig with the rod.', ''],
  ['', 'Nobody knows what this asks.', 'Nor this.']
])('what stands before it does not: %s %s %s', (...said) => {
  expect(ordersOf(said.join(' ').trim())).toEqual(said);
});

const sorted = (text: string) => text.trim().split(' ').sort();

test('nothing of any lesson’s task is lost, in either unit', () => {
  for (const { ask } of loadLessons().flatMap(({ challenges }) => challenges))
    for (const units of ['imperial', 'metric'] as const) {
      const task = inUnits(ask, units);
      expect(sorted(ordersOf(task).join(' '))).toEqual(sorted(task));
    }
});
