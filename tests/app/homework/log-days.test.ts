import { expect, test } from 'vitest';
import { addedDays, daysOfLog, spellsText, isAdded } from '../../../src/lib/app/homework/log-days';
import { parsePacket } from '../../../src/lib/practice';
import { packetOf, type HomeworkResult } from '../../../src/lib/wire';
import { sampleTask } from '../../server/samples';
import { anEntry } from '../../practice/samples';

const at = '2030-05-04T08:00:00.000Z';
const entries = [
  anEntry('entry-of-one-morning'),
  anEntry('entry-of-a-later-day', { on: '2030-05-03', at: '2030-05-03T09:00:00.000Z', fish: 0 }),
  anEntry('entry-of-that-first-dawn', { at: '2030-05-01T05:00:00.000Z', bites: 1, fish: 0 })
];

test('days of the log are offered latest first, their spells in order, without a place', () => {
  const days = daysOfLog(entries, at);
  expect(days.map(({ on }) => on)).toEqual(['2030-05-03', '2030-05-01']);
  expect(days[1].spells.map(({ id }) => id)).toEqual([
    'entry-of-that-first-dawn',
    'entry-of-one-morning'
  ]);
  expect(JSON.stringify(days)).not.toContain('North hump');
  expect(days.map(spellsText)).toEqual(['1 stop, 2 bites', '2 stops, 3 bites, 1 fish']);
});

test('a day that was added and fished on is offered again, and stands as it was added last', () => {
  const [, first] = daysOfLog(entries, at);
  const early = { ...first, spells: first.spells.slice(0, 1) };
  expect([isAdded(first, [early]), isAdded(first, [early, first])]).toEqual([false, true]);
  expect(addedDays([early, first])).toEqual([first]);
});

test('days go back in a packet as they were added, and one with a place is refused', () => {
  const log = daysOfLog(entries, at);
  const result = { assignment: sampleTask, by: 'Ina', model: '1', tries: [], answers: [], log };
  const through = (one: HomeworkResult) =>
    parsePacket(JSON.parse(JSON.stringify(packetOf({ kind: 'result', result: one }))));
  expect(through(result)).toMatchObject({ result: { log } });
  const [day] = log;
  const placed = { ...day, spells: day.spells.map((one) => ({ ...one, place: 'North hump' })) };
  expect(() => through({ ...result, log: [placed] })).toThrow('place must be left out');
});
