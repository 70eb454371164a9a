import { expect, test } from 'vitest';
import { studentQuantile, studentShareBelow } from '../../src/lib/practice/student';

/** Student's t as tabled anywhere (NIST/SEMATECH e-Handbook 1.3.6.7.2), three decimals. */
const table: [p: number, freedom: number, t: number][] = [
  [0.95, 1, 6.314],
  [0.95, 2, 2.92],
  [0.95, 3, 2.353],
  [0.95, 4, 2.132],
  [0.95, 9, 1.833],
  [0.95, 19, 1.729],
  [0.95, 60, 1.671],
  [0.975, 3, 3.182],
  [0.975, 9, 2.262]
];

test.each(table)('t of %d at %d degrees of freedom is the table’s %d', (p, freedom, t) => {
  // The expansion is worst at 3 degrees of freedom, where a term of the fifth order is left out.
  expect(Math.abs(studentQuantile(p, freedom) / t - 1)).toBeLessThan(0.005);
});

test.each(table)(
  'the share of t below the table’s is %d at %d degrees of freedom',
  (p, freedom, t) => {
    // The table gives three decimals: half a thousandth of t is at most 0.0001 of the share here.
    expect(Math.abs(studentShareBelow(t, freedom) - p)).toBeLessThan(1e-4);
    expect(studentShareBelow(-t, freedom)).toBeCloseTo(1 - studentShareBelow(t, freedom), 12);
  }
);
