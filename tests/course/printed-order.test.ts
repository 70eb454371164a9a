import { describe, expect, test } from 'vitest';
import type { OrderAnswer } from '../../src/lib/course/items';
import { printedFaults } from '../../scripts/printed-order';

/** Things that say this, in the order that is asked for. */
function row(source: string, says: string[]) {
  const things = says.map((one, i) => ({ id: `t${i}`, says: one }));
  const key = things.map(({ id }) => id);
  const words = { rule: 'most first', right: '', reversed: '', other: '' };
  return { source, answer: { form: 'order', things, key, ...words } satisfies OrderAnswer };
}
const falls = (...feet: number[]) =>
  row(
    'order-weights-fall',
    feet.map((one) => `{1/2 oz|14 g} in {${one} ft|${one / 3} m}`)
  );
const moves = (...says: string[]) => row('order-moves-travel', says);

// `npm run check:items` looks at every question that may be drawn.
describe('an order that stands in print', () => {
  test('is found out, whether its numbers rise or fall', () => {
    expect(printedFaults(falls(10, 20, 30))).toEqual(['its numbers stand in order: 10, 20, 30']);
    expect(printedFaults(falls(30, 20, 10))).toHaveLength(1);
  });

  test('is none where they go up and down, or one stands there twice', () => {
    expect(printedFaults(falls(20, 30, 10))).toEqual([]);
    expect(printedFaults(falls(20, 20, 30))).toEqual([]);
  });

  test('of moves is that of their size, and a sweep has none', () => {
    const [one, two, three] = ['9 to 10', '9 to 11', '9 to 12'].map((way) => `a lift from ${way}`);
    expect(printedFaults(moves(three, two, one))).toHaveLength(1);
    expect(printedFaults(moves(two, three, 'a low sweep'))).toEqual([]);
  });

  test('is missed no more when the words lose their numbers', () => {
    const lost = moves('a lift', 'a sweep', 'a hop');
    expect(printedFaults(lost)).toEqual(['its numbers are not found any more']);
  });
});
