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
 * Keys per place of one sheet may differ by so many from a third. Places are dealt by a rule and not by
 * chance, so this is no test of chance: it bounds what taking the same place all through can gain.
 */
const MOST_BEYOND_A_THIRD = 2;

const chooseIds = GENERATORS.filter(({ kind }) => kind !== 'mark' && kind !== 'order');

describe('keys', () => {
  test.each(chooseIds.map((one) => [one.id, one] as const))(
    'of %s stand in each place once in any three seeds in a row',
    (_, generator) => {
      for (const first of [1, 2, 3, 17, 998]) {
        const row = [first, first + 1, first + 2];
        const places = row.map((seed) => placeOf(generate(dealing(generator), seed).answer));
        expect(places.sort(), `from seed ${first}`).toEqual([0, 1, 2]);
      }
    }
  );

  // Three seeds in a row are all there are: the fourth deals as the first.
  test.each([1, 2, 3])('of one sheet, seed %i, are spread over the places', (seed) => {
    const places = chooseIds.map((one) => placeOf(generate(dealing(one), seed).answer));
    for (const at of [0, 1, 2]) {
      const beyond = Math.abs(countOf(places, at) - places.length / 3);
      expect(beyond, `place ${at}: ${places}`).toBeLessThanOrEqual(MOST_BEYOND_A_THIRD);
    }
  });

  test('of fixed questions stand in each place as often', () => {
    const places = FIXED.map(({ answer }) => placeOf(answer));
    const counts = [0, 1, 2].map((at) => countOf(places, at));
    // They are written down, so they can be even; one more or less is a question that was added.
    expect(Math.max(...counts) - Math.min(...counts), `${counts}`).toBeLessThanOrEqual(1);
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

function countOf(places: readonly number[], place: number): number {
  return places.filter((one) => one === place).length;
}

/** How surely whoever takes the longest option takes the key: a share where several are longest. */
function longestShare({ options, key }: ChooseAnswer, units: 'imperial' | 'metric'): number {
  const lengths = options.map(({ id, says }) => ({ id, length: inUnits(says, units).length }));
  const most = Math.max(...lengths.map(({ length }) => length));
  const longest = lengths.filter(({ length }) => length === most);
  return longest.some(({ id }) => id === key) ? 1 / longest.length : 0;
}
