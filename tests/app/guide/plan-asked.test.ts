import { expect, test } from 'vitest';
import {
  addressFor,
  planRequestIn,
  clientIn,
  gearFor,
  outfitInAddress
} from '../../../src/lib/app/guide/asked';
import { jigFor } from '../../../src/lib/compute/jobs/jig';
import { outfitGearOf } from '../../../src/lib/fit';
import { anOutfit } from '../../practice/samples';

test('an address asks for a client, a day and minutes, and for somebody new by itself', () => {
  const asked = planRequestIn(
    new URLSearchParams('client=home-1.ina_2&depth=6.1&minutes=45&wind=strong')
  );
  expect(asked).toMatchObject({ depth: 6.1, minutes: 45, wind: 'strong', ground: 'gravel' });
  expect(clientIn(asked)).toEqual({ homework: 'home-1', client: 'ina_2' });
  expect(clientIn(planRequestIn(new URLSearchParams()))).toBeNull();
});

test.each(['minutes=20', 'depth=deep', 'ground=lava', 'client=ina', 'key=1', 'jig={"outfit":1}'])(
  'an address with %s is refused by its field',
  (address) => {
    expect(() => planRequestIn(new URLSearchParams(address))).toThrow(address.split('=')[0]);
  }
);

test('depth and weight are the client’s own until the guide says others', () => {
  const own = { depth_m: 7.6, mass_kg: 0.018 };
  const of = (params: string, known: typeof own | null) =>
    gearFor(planRequestIn(new URLSearchParams(params)), known);
  expect(of('', own)).toEqual({ depth_m: 7.6, jig_kg: 0.018, outfit: null });
  expect(of('depth=5&jig=0.01', own)).toEqual({ depth_m: 5, jig_kg: 0.01, outfit: null });
  expect(of('jig=', own)).toEqual({ depth_m: 7.6, jig_kg: null, outfit: null });
  expect(of('', null).jig_kg).toBeNull();
});

test('an outfit of one’s own is planned with its own drag and line, not with its weight alone', () => {
  const outfit = anOutfit('o1');
  const slow = { ...outfit, jig: { ...outfit.jig, drag_area_m2: 2e-3 } };
  const gear = outfitGearOf(slow);
  const address = new URLSearchParams({ jig: outfitInAddress(gear) });
  const planned = gearFor(planRequestIn(address), null);
  expect(planned).toMatchObject({ jig_kg: outfit.jig.mass_kg, outfit: gear });
  const day = { temperature_C: 16, depth_m: 5, ground: 'gravel', wind: 'calm', fish: 'unknown' };
  const jig = (more: object) => jigFor({ ...day, ...more } as Parameters<typeof jigFor>[0]);
  const [own, weightAlone] = [jig({ ...planned, depth_m: 5 }), jig({ jig_kg: outfit.jig.mass_kg })];
  expect(own.mass_kg).toBe(weightAlone.mass_kg);
  // More than three times the usual drag area: a fall takes much longer.
  expect(own.count_s).toBeGreaterThan(1.3 * weightAlone.count_s);
});

test('another client brings their own depth and weight, and nothing else is lost', () => {
  const form = new FormData();
  for (const [name, value] of [
    ['client', 'home.ina'],
    ['depth', '6.1'],
    ['jig', '0.01'],
    ['minutes', '45']
  ])
    form.set(name, value);
  expect(addressFor(form, 'client')).toBe('?client=home.ina&minutes=45');
  expect(addressFor(form, 'depth')).toBe('?client=home.ina&depth=6.1&jig=0.01&minutes=45');
});
