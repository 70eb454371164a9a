import { describe, expect, test } from 'vitest';
import { isMeasured, sessionFromLog, testedBefore } from '../../src/lib/fit';
import { testSession } from '../../src/lib/wire';
import * as v from 'valibot';
import { anEntry, anOutfit, aSession } from '../practice/samples';

const made = { id: 'session-from-the-log', at: '2030-06-01T08:00:00.000Z', on: '2030-06-01' };
const lift = { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.5 } as const;
const seen = anEntry('entry-of-one-morning', {
  depth_m: 6.1,
  temperature_C: 12,
  drops_s: [11.5, 12.1],
  looks: [{ move: lift, out_m: 11.9, travel_m: 0.42, peak_height_m: 0.13 }]
});
const outfit = anOutfit('o1');

describe('a session from the log', () => {
  test('has each look in the depth where it was made, and each drop with its line', () => {
    const session = sessionFromLog(made, outfit, [seen], undefined);
    expect(session?.tests).toMatchObject([
      { move: lift, depth_m: 6.1, start: { bait_x_m: 11.9 }, travel_m: 0.42, peak_height_m: 0.13 }
    ]);
    expect(session?.drops).toEqual([
      { distance_m: 6.1, times_s: [11.5, 12.1], temperature_C: 12, has_line: true }
    ]);
    expect(v.parse(testSession, session)).toEqual(session);
  });

  test('goes on from the pool’s own tests, water and drops, once', () => {
    const drop = { distance_m: 2, times_s: [2.4], temperature_C: 20, has_line: false };
    const pool = aSession('session-of-one-day', { drops: [drop] });
    const first = sessionFromLog(made, outfit, [seen], pool)!;
    expect(first.tests).toHaveLength(2);
    expect(first.tests[0]).toEqual(pool.tests[0]);
    expect(first.gear.water).toEqual(pool.gear.water);
    expect(first.drops.map(({ distance_m }) => distance_m)).toEqual([2, 6.1]);
    const own = { unknowns: {}, spread: { middle: {}, ends: [] }, model: '1', at: made.at };
    const fitted = (session: string) => anOutfit('o1', { own: { ...own, session } });
    expect(testedBefore(fitted(pool.id), [pool, first])).toBe(pool);
    expect(testedBefore(fitted(first.id), [pool, first])).toBe(pool);
    const alone = sessionFromLog(
      { ...made, id: 'session-of-the-log-2' },
      outfit,
      [seen],
      undefined
    )!;
    expect(testedBefore(fitted(alone.id), [alone])).toBeUndefined();
  });

  test('of drops alone has one drag that is only predicted, and of nothing measured there is none', () => {
    const dropped = { ...seen, looks: [] };
    expect(sessionFromLog(made, outfit, [dropped], undefined)?.tests).toHaveLength(1);
    const plain = anEntry('entry-of-one-morning');
    expect([isMeasured(seen), isMeasured(plain)]).toEqual([true, false]);
    expect(sessionFromLog(made, outfit, [plain, { ...seen, outfit: 'o2' }], undefined)).toBeNull();
  });
});
