import { describe, expect, test } from 'vitest';
import {
  FIXED,
  generate,
  GENERATORS,
  type ChooseAnswer,
  type Generator
} from '../../src/lib/course/items';
import { inUnits } from '../../src/lib/scoring';

/**
 * Of fair deals into three places (two degrees of freedom), one in a hundred has a chi-square above
 * this; into two places fewer. A key that kept a favourite place would be far above it.
 */
const CHI_SQUARE_1_PERCENT = 9.21;
const SEEDS = Array.from({ length: 300 }, (_, i) => i + 1);

const chooseIds = GENERATORS.filter(({ kind }) => kind !== 'mark' && kind !== 'order');

describe('keys', () => {
  test.each(chooseIds.map((one) => [one.id, one] as const))(
    'of %s stand in each place as often as chance would have it',
    (_, generator) => {
      const places = SEEDS.map((seed) => placeOf(generate(dealing(generator), seed).answer));
      expect(chiSquare(places, 3)).toBeLessThan(CHI_SQUARE_1_PERCENT);
    }
  );

  test('of one seed’s questions, as on a printed sheet, stand in each place as often', () => {
    for (const seed of [1, 2, 3]) {
      const places = chooseIds.map((one) => placeOf(generate(dealing(one), seed).answer));
      expect(chiSquare(places, 3), `seed ${seed}`).toBeLessThan(CHI_SQUARE_1_PERCENT);
    }
  });

  test('of fixed questions stand in each place as often', () => {
    const places = FIXED.map(({ answer }) => placeOf(answer));
    expect(chiSquare(places, 3)).toBeLessThan(CHI_SQUARE_1_PERCENT);
  });

  test.each(['imperial', 'metric'] as const)(
    'of fixed questions are the longest option no more often than chance, %s',
    (units) => {
      const shares = FIXED.map(({ answer }) => longestShare(answer as ChooseAnswer, units));
      const share = shares.reduce((sum, one) => sum + one, 0) / shares.length;
      expect(share).toBeLessThanOrEqual(1 / 3);
    }
  );
});

/** The generator's own name and dealing, with a question that needs no run. */
function dealing(generator: Generator): Generator {
  const options = ['key', 'one', 'other'].map((id) => ({ id, says: id, reply: '' }));
  return {
    ...generator,
    make: () => ({
      ask: '',
      explain: '',
      answer: { form: 'choose', options, key: 'key' },
      evidence: { is: 'practice', source: 'a test' },
      cases: []
    })
  };
}

function placeOf(answer: { form: string }): number {
  const { options, key } = answer as ChooseAnswer;
  return options.findIndex(({ id }) => id === key);
}

function chiSquare(places: readonly number[], count: number): number {
  const expected = places.length / count;
  const counts = Array.from({ length: count }, (_, at) => places.filter((p) => p === at).length);
  return counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
}

/** How surely whoever takes the longest option takes the key: a share where several are longest. */
function longestShare({ options, key }: ChooseAnswer, units: 'imperial' | 'metric'): number {
  const lengths = options.map(({ id, says }) => ({ id, length: inUnits(says, units).length }));
  const most = Math.max(...lengths.map(({ length }) => length));
  const longest = lengths.filter(({ length }) => length === most);
  return longest.some(({ id }) => id === key) ? 1 / longest.length : 0;
}
