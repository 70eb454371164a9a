import { describe, expect, test } from 'vitest';
import type { RodInput } from '../../src/lib/model';
import { FIRST_GEAR, setupOf } from '../../src/lib/sandbox/gear';
import {
  comparable,
  firstWater,
  loadWater,
  MOST_TRIES,
  saveWater,
  withTry
} from '../../src/lib/app/water/water';

const INPUT: RodInput = {
  kind: 'rod_input',
  rate_Hz: 100,
  elevation_deg: [10, 10, 10],
  azimuth_deg: [20, 21.5, 24]
};

function shelf(
  content?: string
): Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> & { content?: string } {
  return {
    content,
    getItem() {
      return this.content ?? null;
    },
    setItem(_key, value) {
      this.content = value;
    },
    removeItem() {
      this.content = undefined;
    }
  };
}

describe('free practice', () => {
  test('is there again after a reload, setup and tries', () => {
    const place = shelf();
    const water = withTry({ ...firstWater(), plane: 'lift' }, INPUT);
    expect(saveWater(place, water)).toBe(true);
    expect(loadWater(place)).toEqual(water);
  });

  test.each([
    ['nothing', undefined],
    ['no JSON', '{'],
    ['something else', '[1, 2]'],
    ['a setup that cannot be', JSON.stringify({ setup: { water: { depth_m: -3 } } })]
  ])('starts from the first water where %s was kept', (_name, content) => {
    expect(loadWater(shelf(content))).toEqual(firstWater());
  });

  test('leaves out a try that cannot be read and keeps the others', () => {
    const water = withTry(withTry(firstWater(), INPUT), { ...INPUT, azimuth_deg: [20, 20, 30] });
    const kept = JSON.parse(JSON.stringify(water));
    kept.tries[0].input.rate_Hz = 50;
    expect(loadWater(shelf(JSON.stringify(kept))).tries).toEqual([water.tries[1]]);
  });

  test('keeps the last tries only', () => {
    let water = firstWater();
    for (let i = 0; i <= MOST_TRIES; i++) water = withTry(water, { ...INPUT, elevation_deg: i });
    expect(water.tries).toHaveLength(MOST_TRIES);
    expect(water.tries[0].input.elevation_deg).toBe(1);
  });

  test('says so when the browser has no room', () => {
    const full = {
      getItem: () => null,
      removeItem: () => undefined,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      }
    };
    expect(saveWater(full, firstWater())).toBe(false);
  });

  test('draws tries with another bait, but none from another place', () => {
    const water = withTry(firstWater(), INPUT);
    const heavier = { ...water, setup: setupOf({ ...FIRST_GEAR, mass_kg: 0.028 }) };
    const deeper = { ...water, setup: setupOf({ ...FIRST_GEAR, depth_m: 9 }) };
    expect(comparable(heavier)).toEqual(water.tries);
    expect(comparable(deeper)).toEqual([]);
    expect(comparable({ ...water, plane: 'lift' })).toEqual([]);
  });
});
