import { expect, test } from 'vitest';
import { agreementOf, chiSquare95 } from '../../src/lib/fit';
import { seededRandom } from '../../src/lib/model';

test('chi square is that of the tables', () => {
  // Quantiles of 0.95, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4.
  const table = { 1: 3.841, 2: 5.991, 3: 7.815, 4: 9.488, 9: 16.919, 19: 30.144 };
  for (const [free, value] of Object.entries(table)) {
    // Wilson and Hilferty are worst at few degrees of freedom: 2.7 % at one, 0.9 % at two.
    const most = free === '1' ? 0.03 : 0.01;
    expect(Math.abs(chiSquare95(Number(free)) / value - 1)).toBeLessThan(most);
  }
});

test('six studies come to what a textbook has for them', () => {
  // Borenstein et al. 2009, Introduction to Meta-Analysis, chapter 14, from memory: effect and variance
  // of six studies; T² 0.037, summary effect 0.358 with a standard error of 0.105.
  const studies = [
    [0.095, 0.033],
    [0.277, 0.031],
    [0.367, 0.05],
    [0.664, 0.011],
    [0.462, 0.043],
    [0.185, 0.023]
  ].map(([value, variance]) => ({ value, sd: Math.sqrt(variance) }));
  const said = agreementOf(studies);
  // The variances are known to three decimals here, 0.011 among them: 5 % of the largest weight.
  expect(Math.abs((said?.between_sd ?? 0) ** 2 - 0.0373)).toBeLessThan(0.002);
  expect(Math.abs((said?.mean ?? 0) - 0.358)).toBeLessThan(0.002);
  expect(Math.abs((said?.sd ?? 0) - 0.1055)).toBeLessThan(0.002);
  // Q is 12.0 there, with five degrees of freedom.
  expect(Math.abs(5 * (said?.birge ?? 0) ** 2 - 12)).toBeLessThan(0.4);
  expect(said?.agrees).toBe(false);
});

test('one value agrees with nobody, and of two none is the one that is off', () => {
  const one = { value: 1, sd: 0.1 };
  expect(agreementOf([one])).toBeNull();
  expect(agreementOf([one, { value: 3, sd: 0.2 }])).toMatchObject({ agrees: false, z: null });
});

test('values that agree are a plain weighted mean, and the one that is off stands out', () => {
  const three = [
    { value: 1, sd: 0.1 },
    { value: 1.1, sd: 0.2 },
    { value: 0.9, sd: 0.1 }
  ];
  const said = agreementOf(three);
  // (100·1 + 25·1.1 + 100·0.9)/225, and Q is 1 with two degrees of freedom.
  expect(said?.mean).toBeCloseTo(0.966667, 6);
  expect(said).toMatchObject({ agrees: true, between_sd: 0, birge: expect.closeTo(0.7071, 4) });
  const z = agreementOf([...three, { value: 2.4, sd: 0.1 }])?.z ?? [];
  expect(Math.abs(z[3])).toBeGreaterThan(3);
  expect(Math.max(...z.slice(0, 3).map(Math.abs))).toBeLessThan(2);
});

test('nine intervals in ten hold the truth, whether people differ beyond their errors or not', () => {
  const random = seededRandom(29);
  const bell = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const heldAt = (between: number) => {
    const count = 2000;
    const held = Array.from({ length: count }, () => {
      const values = [0.1, 0.15, 0.2, 0.1, 0.12].map((sd) => {
        return { value: 1 + between * bell() + sd * bell(), sd };
      });
      const { mean, sd } = agreementOf(values)!;
      return Math.abs(mean - 1) <= 1.6449 * sd;
    });
    return held.filter(Boolean).length / count;
  };
  // Five people: the deviation between them is itself a guess, so 90 % are not reached where they differ.
  expect(heldAt(0)).toBeGreaterThan(0.88);
  expect(heldAt(0.3)).toBeGreaterThan(0.8);
});
