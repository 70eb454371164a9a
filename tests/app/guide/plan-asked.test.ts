import { expect, test } from 'vitest';
import {
  addressFor,
  addressWith,
  clientsIn,
  gearFor,
  outfitInAddress,
  planRequestIn
} from '../../../src/lib/app/guide/asked';
import {
  boatNames,
  calledInBoat,
  keepBoatNames,
  listedNames
} from '../../../src/lib/app/guide/boat';
import { clockTimes } from '../../../src/lib/app/guide/clock-times';
import { temperatureChoices } from '../../../src/lib/app/gear/day-water';
import { jigFor } from '../../../src/lib/compute/jobs/jig-for';
import { outfitGearOf } from '../../../src/lib/fit';
import { anOutfit } from '../../practice/samples';

test('an address asks for a client, a day and minutes, and for somebody new by itself', () => {
  const asked = planRequestIn(
    new URLSearchParams('client=home-1.ina_2&depth=6.1&minutes=45&wind=strong')
  );
  expect(asked).toMatchObject({ depth: 6.1, minutes: 45, wind: 'strong', ground: 'gravel' });
  expect(clientsIn(asked)).toEqual([{ homework: 'home-1', client: 'ina_2' }]);
  expect(clientsIn(planRequestIn(new URLSearchParams()))).toEqual([null]);
});

test('a day has its run out and back unless another is asked for, and never more than leaves a lesson', () => {
  const run = (query: string) => planRequestIn(new URLSearchParams(query)).run;
  expect(['', 'minutes=30', 'minutes=45', 'run=0', 'minutes=240&run=25'].map(run)).toEqual([
    ...[15, 0, 5, 0, 25]
  ]);
});

test('a plan begins with a temperature that any day’s form offers, in either units', () => {
  const { temperature } = planRequestIn(new URLSearchParams());
  const offered = (units: 'imperial' | 'metric') =>
    temperatureChoices(temperature, units).map(({ says }) => parseInt(says));
  const degrees = (from: number, to: number) =>
    Array.from({ length: to - from + 1 }, (_, i) => from + i);
  expect(offered('imperial')).toEqual(degrees(35, 90));
  expect(offered('metric')).toEqual(degrees(2, 32));
});

test('an address asks for a party, one after the other, and for any depth', () => {
  const asked = planRequestIn(
    new URLSearchParams('client=a.b&client=&client=a.c&depth=9.9&start=06:30')
  );
  expect(asked).toMatchObject({ depth: 9.9, start: '06:30' });
  expect(clientsIn(asked)).toEqual([
    { homework: 'a', client: 'b' },
    null,
    { homework: 'a', client: 'c' }
  ]);
  expect(() =>
    planRequestIn(new URLSearchParams('client=&client=&client=&client=&client='))
  ).toThrow(/client.*4 at most/);
});

test('one more comes into the boat, and one is taken out, with nothing else changed', () => {
  const formOf = () => {
    const form = new FormData();
    for (const [name, value] of [
      ['client', 'a.b'],
      ['client', ''],
      ['depth', '9']
    ])
      form.append(name, value);
    return form;
  };
  const asked = (address: string) => new URLSearchParams(address);
  expect(asked(addressWith(formOf(), 'one more')).getAll('client')).toEqual(['a.b', '', '']);
  expect(asked(addressWith(formOf(), { without: 0 })).getAll('client')).toEqual(['']);
  expect(asked(addressWith(formOf(), { without: 0 })).get('depth')).toBe('9');
  // With several a depth is the boat’s, whoever else comes.
  expect(asked(addressFor(formOf(), 'client')).get('depth')).toBe('9');
});

test('names that were typed stay on the shelf, and stand where homework has none', () => {
  const kept = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key)
  };
  expect(boatNames(shelf)).toEqual([]);
  keepBoatNames(shelf, ['', 'Bo']);
  expect(boatNames(shelf)).toEqual(['', 'Bo']);
  expect(calledInBoat(['Ina', null, null], boatNames(shelf))).toEqual(['Ina', 'Bo', 'Client 3']);
  expect(calledInBoat([null], [])).toEqual(['Someone new']);
  expect(listedNames(['Ina', 'Bo', 'Wim'])).toBe('Ina, Bo and Wim');
});

test('each part says when it begins by the clock, over noon and midnight, and the last when it ends', () => {
  const blocks = [{ minutes: 65 }, { minutes: 20 }];
  expect(clockTimes('11:50', blocks, 'imperial')).toEqual(['11:50 am', '12:55 pm', '1:15 pm']);
  expect(clockTimes('23:30', blocks, 'metric')).toEqual(['23:30', '00:35', '00:55']);
  expect(clockTimes('00:05', [], 'imperial')).toEqual(['12:05 am']);
});

test.each([
  'minutes=20',
  'depth=deep',
  'ground=lava',
  'client=ina',
  'key=1',
  'start=25:00',
  'jig={"outfit":1}'
])('an address with %s is refused by its field', (address) => {
  expect(() => planRequestIn(new URLSearchParams(address))).toThrow(address.split('=')[0]);
});

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
