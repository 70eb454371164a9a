import { expect, test } from 'vitest';
import { allLessons, findChallenge } from '../../src/lib/course';
import { outfitGearOf } from '../../src/lib/fit';
import { challengeOfTry, inGear } from '../../src/lib/practice';
import { gradeTry, parseChallenge, solveCorrection } from '../../src/lib/scoring';
import { readDocument, toDocument } from '../../src/lib/wire';
import { aRecord, anOutfit, aTry } from './samples';

const heavy = anOutfit('o1', {
  jig: { mass_kg: 0.028, head: '', trailer: '', drag_area_m2: 9e-4 }
});
const gear = outfitGearOf(heavy);
const find = (id: string) => findChallenge(id, []);
const made = aTry('t1', { challenge: 'drag-unseen-7-3', gear });

test('a challenge in one’s own gear keeps its water, start, goals and name', () => {
  const task = find('drag-unseen-7-3');
  const own = challengeOfTry(made, find);
  expect(own).toMatchObject({ id: task?.id, goals: task?.goals });
  expect(own?.setup.water).toEqual(task?.setup.water);
  expect(own?.setup.start).toEqual(task?.setup.start);
  expect(own?.setup.bait).toMatchObject({ mass_kg: 0.028, drag_area_m2: 9e-4 });
  expect(own?.setup.rod?.length_m).toBeCloseTo(1.8, 9);
  expect(() => parseChallenge(own)).not.toThrow();
});

test('a try is graded in the gear it was made with', () => {
  const [task, own] = [find('drag-unseen-7-3'), challengeOfTry(made, find)];
  if (!task || !own) throw new Error('there is no such drill');
  const input = { ...made.input, azimuth_deg: Array.from({ length: 250 }, (_, i) => i / 5) };
  const travel = (challenge: typeof task) => gradeTry(challenge, input).result.travel_m;
  expect(travel(own)).not.toBe(travel(task));
  expect(travel(inGear(task, gear))).toBe(travel(own));
});

test('a correction’s band is the gear’s own where the gear has one', () => {
  const task = findChallenge('exactly-one-foot', allLessons());
  if (!task) throw new Error('there is no such challenge');
  const spread = { middle: { reach_m: 1.8 }, ends: [{ reach_m: 1.79 }, { reach_m: 1.81 }] };
  const known = solveCorrection(inGear(task, { ...gear, spread }));
  const unknown = solveCorrection(inGear(task, gear));
  expect(known?.band_m).toBeGreaterThan(0);
  expect(known?.band_m).toBeLessThan((unknown?.band_m ?? 0) / 2);
});

test('a try with its gear is kept in the record’s file and read again', () => {
  const record = aRecord({ tries: [made] });
  const read = readDocument(JSON.parse(JSON.stringify(toDocument(record))), made.at);
  expect(read.tries).toEqual([made]);
});
