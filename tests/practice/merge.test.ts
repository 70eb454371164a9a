import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergeRecords } from '../../src/lib/practice';
import { aDraft, anOutfit, aRecord, aSession, aTry } from './samples';

const hour = (h: number) => `2030-05-01T${String(h).padStart(2, '0')}:00:00.000Z`;

describe('two records of one learner become one', () => {
  test('with every try of both, each once, in the order of their times', () => {
    const tries = fc
      .uniqueArray(fc.integer({ min: 0, max: 23 }), { maxLength: 12 })
      .map((hours) => hours.map((h) => aTry(`t${h}`, { at: hour(h) })));
    fc.assert(
      fc.property(tries, tries, (mine, others) => {
        const merged = mergeRecords(aRecord({ tries: mine }), aRecord({ tries: others })).tries;
        const times = [...new Set([...mine, ...others].map(({ at }) => at))].sort();
        expect(merged.map(({ at }) => at)).toEqual(times);
      })
    );
  });

  test('an outfit or a session that was changed on both stands as it was changed last', () => {
    const id = 'session-of-one-day';
    const early = aRecord({ outfits: [anOutfit('o1')], sessions: [aSession(id)] });
    const late = aRecord({
      outfits: [anOutfit('o1', { name: 'Heavier', at: hour(23) }), anOutfit('o2')],
      sessions: [aSession(id, { notes: 'Wind', at: hour(22) })]
    });
    for (const merged of [mergeRecords(early, late), mergeRecords(late, early)]) {
      expect(merged.outfits).toEqual(late.outfits);
      expect(merged.sessions).toEqual(late.sessions);
    }
  });

  test('a session of a club stands as it was changed last, and a spell half filled in is that of this device', () => {
    const at = (h: number, jig: string) => {
      return { session: aSession('session-of-one-day', { at: hour(h) }), jig };
    };
    const mine = aRecord({ draft: aDraft({ bites: 1 }), club: [at(9, 'Half')] });
    const other = aRecord({ draft: aDraft({ bites: 3 }), club: [at(11, 'Half ounce')] });
    expect(mergeRecords(mine, other)).toMatchObject({ draft: { bites: 1 }, club: other.club });
    expect(mergeRecords(aRecord(), other)).toMatchObject({ draft: { bites: 3 } });
  });

  test('of two predictions the earlier stands, whichever record is merged into which', () => {
    const early = aRecord({
      predictions: [{ lesson: 'slack', station: 'predict', option: 'half', at: hour(7) }]
    });
    const late = aRecord({
      predictions: [{ lesson: 'slack', station: 'predict', option: 'twice', at: hour(9) }]
    });
    expect(mergeRecords(early, late).predictions).toEqual(early.predictions);
    expect(mergeRecords(late, early).predictions).toEqual(early.predictions);
  });

  test('both ways down a lesson count, the later place last, and the first time it was finished', () => {
    const lesson = 'one-foot';
    const phone = aRecord({
      progress: [{ lesson, reached: ['field'], at: hour(9), finished: hour(9) }]
    });
    const desk = aRecord({
      progress: [{ lesson, reached: ['see'], at: hour(11), finished: hour(8) }]
    });
    const expected = [{ lesson, reached: ['field', 'see'], at: hour(11), finished: hour(8) }];
    expect(mergeRecords(phone, desk).progress).toEqual(expected);
    expect(mergeRecords(desk, phone).progress).toEqual(expected);
  });

  test('tries skipped on either device stay skipped', () => {
    const lesson = 'slack';
    const at = (skipped: string[] | undefined, h: number) =>
      aRecord({ progress: [{ lesson, reached: ['see'], at: hour(h), finished: null, skipped }] });
    const both = mergeRecords(at(['one'], 8), at(['two'], 9)).progress;
    expect(both).toMatchObject([{ skipped: ['one', 'two'] }]);
    expect(mergeRecords(at(['one'], 9), at(undefined, 8)).progress).toMatchObject([
      { skipped: ['one'] }
    ]);
  });

  test('a lesson finished on one device only stays finished', () => {
    const lesson = 'one-foot';
    const done = aRecord({
      progress: [{ lesson, reached: ['field'], at: hour(8), finished: hour(8) }]
    });
    const later = aRecord({
      progress: [{ lesson, reached: ['see'], at: hour(9), finished: null }]
    });
    expect(mergeRecords(done, later).progress).toMatchObject([{ finished: hour(8) }]);
    expect(mergeRecords(later, done).progress).toMatchObject([{ finished: hour(8) }]);
  });

  test('the settings of the device in hand stay', () => {
    const other = aRecord({ settings: { units: 'imperial', scheme: 'light' } });
    expect(mergeRecords(aRecord(), other).settings).toEqual({ units: 'metric', scheme: 'dark' });
  });

  test('what was set aside is kept from both, and once where both have it', () => {
    const aside = (what: string) => ({ what, why: 'at: missing', at: hour(6), value: { id: 7 } });
    const mine = aRecord({ setAside: [aside('tries.0'), aside('tries.4')] });
    const other = aRecord({ setAside: [aside('tries.4'), aside('tries.5')] });
    const kept = mergeRecords(mine, other).setAside.map(({ what }) => what);
    expect(kept).toEqual(['tries.0', 'tries.4', 'tries.5']);
  });
});
