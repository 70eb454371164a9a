import fc from 'fast-check';
import { expect, test } from 'vitest';
import { errorScores } from '../../src/lib/practice';

test('bias, spread and size of errors are told apart', () => {
  // By hand: mean 2, squares about it 1 + 9 + 4 over 3.
  expect(errorScores([1, 5, 0])).toEqual({
    count: 3,
    constant: 2,
    variable: Math.sqrt(14 / 3),
    absolute: 2,
    total: Math.sqrt(26 / 3)
  });
  expect(errorScores([-3, 1]).absolute).toBe(2);
});

test('E² is CE² and VE² for any errors', () => {
  const errors = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 1 });
  fc.assert(
    fc.property(errors, (some) => {
      const { constant, variable, total } = errorScores(some);
      expect(total ** 2).toBeCloseTo(constant ** 2 + variable ** 2, 9);
    })
  );
});

test('no errors give no scores', () => {
  expect(() => errorScores([])).toThrow('errors must not be empty');
});
