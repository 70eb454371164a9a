import { afterEach, beforeEach, expect, test } from 'vitest';
import { heldOn } from '../../src/lib/app/clinic/home/take-home';
import { recordFile } from '../../src/lib/app/record/record-file';
import { dayOfText } from '../../src/lib/shell/dates';
import { emptyRecord } from '../../src/lib/wire';

/** Nine in the evening of November 30 in Dallas; in UTC it is December already. */
const EVENING = '2026-12-01T03:10:00.000Z';

const zone = process.env.TZ;
beforeEach(() => void (process.env.TZ = 'America/Chicago'));
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

test('a time in the evening is told with the day of the reader’s calendar', () => {
  expect(dayOfText(EVENING)).toBe('Nov 30, 2026');
});

test('a clinic in the evening was held that day, on the phone that brings it home, too', () => {
  const home = { tries: [], answers: [], asked: [], held: '2026-12-01' };
  const prediction = { lesson: 'one-foot', station: 'predict', option: 'same', at: EVENING };
  expect(heldOn({ ...home, predictions: [prediction] })).toBe('2026-11-30');
  expect(heldOn({ ...home, predictions: [] })).toBe('2026-12-01');
});

test('a record that is kept in the evening is named by that day', () => {
  expect(recordFile(emptyRecord(), EVENING).name).toBe('feltfoot-record-2026-11-30.json');
});
