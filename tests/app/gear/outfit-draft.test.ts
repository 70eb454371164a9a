import { describe, expect, test } from 'vitest';
import {
  draftOf,
  dropSoFar,
  readDraft,
  type OutfitDraft
} from '../../../src/lib/app/gear/outfit-draft';
import type { Units } from '../../../src/lib/scoring';
import type { Outfit } from '../../../src/lib/wire';
import { anOutfit } from '../../practice/samples';

const at = '2030-05-01T12:00:00.000Z';
const as = (before: Outfit | null = null) => ({ id: 'o1', at, before });

const typed: OutfitDraft = {
  ...draftOf(null, 'imperial'),
  name: 'Heavy rod',
  weight: '5/8',
  rod: '7\'2"',
  held: '15',
  strength: '14'
};

/** @returns the outfit that was read; a test fails where there is none */
function outfitFrom(draft: OutfitDraft, units: Units = 'imperial', before: Outfit | null = null) {
  const read = readDraft(draft, units, as(before));
  if (!('outfit' in read)) throw new Error(JSON.stringify(read.faults));
  return read.outfit;
}

describe('an outfit as it is typed', () => {
  test('is read in the units of the field, the diameter from the pound test', () => {
    const { jig, rod, line } = outfitFrom(typed);
    expect(jig.mass_kg).toBeCloseTo(0.017718, 6);
    expect(rod.length_m).toBeCloseTo(7 * 0.3048 + 2 * 0.0254, 9);
    expect(rod.held_m).toBeCloseTo(15 * 0.0254, 9);
    // Between 12 lb at 0.28 mm and 15 lb at 0.33 mm, by cross-section.
    expect(line.diameter_m).toBeCloseTo(0.3142e-3, 6);
  });

  test.each(['imperial', 'metric'] as const)(
    'stands as it was when it is opened and saved, %s',
    (units) => {
      const whole = anOutfit('o1', {
        jig: {
          mass_kg: 0.0177,
          head: 'football',
          trailer: 'craw',
          drop: { distance_m: 2.5, times_s: [2.1, 2, 2.2], temperature_C: 15 }
        },
        rod: { length_m: 2.18, held_m: 0.38, flex: { hung_kg: 0.1, down_m: 0.12 } },
        line: {
          material: 'braid',
          diameter_m: 0.00023,
          leader: { material: 'fluorocarbon', diameter_m: 0.00034, length_m: 2 }
        }
      });
      const again = outfitFrom(draftOf(whole, units), units, whole);
      expect(again.name).toBe(whole.name);
      // What a field shows is rounded to less than a rod or a drop can be measured to: a third of a percent.
      const numbers = ({ jig, rod, line }: Outfit) =>
        [
          ...[jig.mass_kg, jig.drop?.distance_m, ...(jig.drop?.times_s ?? [])],
          ...[rod.length_m, rod.held_m, rod.flex?.hung_kg, rod.flex?.down_m],
          ...[line.diameter_m, line.leader?.diameter_m, line.leader?.length_m]
        ].map(Number);
      numbers(again).forEach((value, i) => {
        expect(Math.abs(value / numbers(whole)[i] - 1)).toBeLessThan(0.004);
      });
    }
  );

  test.each<[Partial<OutfitDraft>, string]>([
    [{ name: ' ' }, 'name'],
    [{ weight: 'light' }, 'weight'],
    [{ weight: '70' }, 'weight'],
    [{ rod: '' }, 'rod'],
    [{ rod: '1 in' }, 'rod'],
    [{ hung: '4 oz' }, 'down'],
    [{ strength: '' }, 'strength'],
    [{ dropDistance: '8' }, 'dropTimes'],
    [{ dropTimes: '2.1 fast', dropDistance: '8' }, 'dropTimes'],
    [{ hasLeader: true, leaderStrength: '', leaderLength: '6' }, 'leaderStrength']
  ])('with %j has a fault at %s', (change, field) => {
    const read = readDraft({ ...typed, ...change }, 'imperial', as());
    expect('faults' in read && Object.keys(read.faults)).toContain(field);
  });

  test('keeps its own numbers until the tackle is another', () => {
    const own = {
      unknowns: {},
      spread: { middle: {}, ends: [] },
      session: 'session-of-one-day',
      model: '1',
      at
    };
    const before = { ...outfitFrom(typed), own };
    const draft = draftOf(before, 'imperial');
    expect(outfitFrom({ ...draft, name: 'Renamed' }, 'imperial', before).own).toEqual(own);
    expect(outfitFrom({ ...draft, weight: '1 oz' }, 'imperial', before).own).toBeUndefined();
  });
});

test('a drop says its drag area while it is typed, and nothing before it can be read', () => {
  expect(dropSoFar({ ...typed, dropDistance: '8' }, 'imperial')).toBe('');
  const said = dropSoFar({ ...typed, dropDistance: '8', dropTimes: '2.4 2.5' }, 'imperial');
  expect(said).toMatch(
    /^Your drop says drag area \d\.\d\d\sin², \d\.\d\d\sin² to \d\.\d\d\sin² nine/
  );
});
