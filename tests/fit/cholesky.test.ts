import { expect, test } from 'vitest';
import { inverseOf, logDeterminant, solved } from '../../src/lib/fit/cholesky';

/** The worked example of a Cholesky factor with whole numbers: L = [[2,0,0],[6,1,0],[-8,5,3]]. */
const A = [
  [4, 12, -16],
  [12, 37, -43],
  [-16, -43, 98]
];

test('a system with a known factor is solved', () => {
  // A·(1, 2, 3) worked out by hand.
  const b = [4 + 24 - 48, 12 + 74 - 129, -16 - 86 + 294];
  solved(A, b).forEach((x, i) => expect(x).toBeCloseTo(i + 1, 9));
});

test('the determinant is the square of the factor’s diagonal', () => {
  expect(logDeterminant(A)).toBeCloseTo(Math.log((2 * 1 * 3) ** 2), 12);
});

test('the inverse undoes', () => {
  const inverse = inverseOf(A);
  const product = A.map((row) =>
    A.map((_, j) => row.reduce((sum, a, k) => sum + a * inverse[k][j], 0))
  );
  product.forEach((row, i) => row.forEach((x, j) => expect(x).toBeCloseTo(i === j ? 1 : 0, 9)));
});

test('a matrix that is not positive definite is refused', () => {
  expect(() =>
    solved(
      [
        [1, 2],
        [2, 1]
      ],
      [1, 1]
    )
  ).toThrow(/not positive definite/);
});
