import { expect, test } from 'vitest';
import { simulate } from '../../../src/lib/model';
import {
  FIRST_PAIRS,
  movesToCompare,
  comparedSideOf,
  variantsOf,
  type Differing
} from '../../../src/lib/app/water/choices';
import { challengeAt } from '../../../src/lib/app/water/challenge-at';
import { shownRetrieves } from '../../../src/lib/app/water/shown';
import { firstWater, withTry } from '../../../src/lib/app/water/water';
import { anOutfit } from '../../practice/samples';
import { entries } from '../../../src/lib/app/lesson/glossary-entries';

const shown = shownRetrieves().flatMap(({ challenges }) => challenges);
const [plain] = movesToCompare(null, shown);

function pairOf(differing: keyof typeof FIRST_PAIRS) {
  const variantNamed = (id: string) =>
    variantsOf(differing, []).find((one) => one.id === id) ?? variantsOf(differing, [])[0];
  return FIRST_PAIRS[differing].map((id) => {
    const { setup, move, hold_s } = comparedSideOf(plain, variantNamed(id), 'imperial');
    return simulate({ ...setup, move, hold_s });
  });
}

test('the first pairs are the classic cases: the lighter and the quicker one leave the bottom', () => {
  const [light, heavy] = pairOf('weight');
  expect(light.peak_height_m).toBeGreaterThan(0.025);
  expect(heavy.hops).toHaveLength(0);
  const [slow, fast] = pairOf('pace');
  expect(slow.hops).toHaveLength(0);
  expect(fast.peak_height_m).toBeGreaterThan(0.05);
});

test('each variant of a sweep can be run', () => {
  const kinds: Differing[] = ['weight', 'pace', 'line', 'gear'];
  const made = kinds.flatMap((differing) =>
    variantsOf(differing, [anOutfit('o1')]).map((one) => comparedSideOf(plain, one, 'metric'))
  );
  const still = made.filter(
    ({ setup, move }) => !(simulate({ ...setup, move, hold_s: 1 }).travel_m > 0)
  );
  expect(still.map(({ name }) => name)).toEqual([]);
});

test('the last try in practice water can be compared, in its own water', () => {
  const input = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg: [3, 4] } as const;
  const water = withTry(firstWater(), { ...input, azimuth_deg: [...input.azimuth_deg] });
  const own = movesToCompare(water, shown).find(({ id }) => id === 'last-try');
  expect(own).toMatchObject({ move: input, setup: water.setup, plane: water.plane });
  expect(movesToCompare(firstWater(), shown).some(({ id }) => id === 'last-try')).toBe(false);
});

test('an address names a challenge of the retrieves, or none', () => {
  expect(challengeAt('#one-hop')).toBe('one-hop');
  expect(challengeAt('#contact-over-rocks')).toBeNull();
  expect(challengeAt('')).toBeNull();
});

test('each word of the glossary has an address of its own', () => {
  const ids = entries.map(({ id }) => id);
  expect(ids.filter((id) => !/^[a-z-]+$/.test(id))).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});
