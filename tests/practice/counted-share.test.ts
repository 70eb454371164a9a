import { describe, expect, test } from 'vitest';
import { countedShare, doOverlap } from '../../src/lib/practice';

const Z95 = 1.959964;

describe('a counted share', () => {
  /** Newcombe 1998, Statistics in Medicine 17, 857–872, table I: the score interval without correction. */
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718]
  ])('of %i in %i lies where the published table has it', (hits, of, least, most) => {
    const [low, high] = countedShare(hits, of, Z95).interval90;
    // Four digits are printed.
    expect(low).toBeCloseTo(least, 4);
    expect(high).toBeCloseTo(most, 4);
  });

  test('says little of few spells and holds all of its own share', () => {
    const [low, high] = countedShare(2, 3).interval90;
    expect(high - low).toBeGreaterThan(0.6);
    for (const [hits, of] of [
      [0, 1],
      [1, 1],
      [4, 9]
    ]) {
      const { share, interval90 } = countedShare(hits, of);
      expect(share).toBeGreaterThanOrEqual(interval90[0]);
      expect(share).toBeLessThanOrEqual(interval90[1]);
    }
  });

  test('holds the true share about nine times in ten, whatever it is', () => {
    // Exact coverage over all outcomes of twelve spells, no chance in it.
    const choose = (n: number, k: number): number =>
      k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k;
    const covers = (p: number) =>
      Array.from({ length: 13 }, (_, k) => k)
        .filter((k) => {
          const [low, high] = countedShare(k, 12).interval90;
          return low <= p && p <= high;
        })
        .reduce((sum, k) => sum + choose(12, k) * p ** k * (1 - p) ** (12 - k), 0);
    const shares = [0.1, 0.25, 0.4, 0.5, 0.7, 0.85].map(covers);
    // Counts are whole, so it swings about 0.9 (Brown, Cai & DasGupta 2001): by a twelfth here.
    for (const share of shares) expect(Math.abs(share - 0.9)).toBeLessThan(0.085);
  });

  test('is refused of no tries, and of more hits than tries', () => {
    expect(() => countedShare(0, 0)).toThrow('no share: 0 of 0');
    expect(() => countedShare(3, 2)).toThrow('no share: 3 of 2');
  });

  test('overlaps another that leaves room for the same', () => {
    expect(doOverlap(countedShare(2, 5), countedShare(0, 5))).toBe(true);
    expect(doOverlap(countedShare(19, 20), countedShare(1, 20))).toBe(false);
  });
});
