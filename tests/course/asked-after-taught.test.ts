import { describe, expect, test } from 'vitest';
import { FIXED } from '../../src/lib/course/items';
import { earlyFaults } from '../../scripts/early-moves';

// `npm run check:items` looks at every question that may be drawn.
describe('a move that is asked for before its lesson', () => {
  const soonest = 'one-foot';

  test.each([
    ['a lift on the clock', 'From 9 o’clock to 11 o’clock, how high does it go?', 'the-clock'],
    ['a hop', 'After two hops, where does it lie?', 'hops'],
    ['a stroke', 'What does each stroke take?', 'stroke-and-fall']
  ])('is found out: %s', (_, ask, taught) => {
    expect(earlyFaults({ objective: soonest, ask })).toEqual([
      `one-foot asks for what ${taught} teaches: ${ask}`
    ]);
  });

  test('is none where that lesson, or one after it, asks', () => {
    const ask = 'What does each stroke take?';
    expect(earlyFaults({ objective: 'stroke', ask })).toEqual([]);
  });

  test.each(FIXED.map((one) => [one.source, one] as const))('is none in %s', (_, item) => {
    expect(earlyFaults(item)).toEqual([]);
  });
});
