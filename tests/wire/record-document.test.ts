import { describe, expect, test } from 'vitest';
import { readDocument, RecordError, toDocument } from '../../src/lib/wire';
import {
  aDraft,
  aPlan,
  aRecord,
  anAnswer,
  anEntry,
  anOutfit,
  aSession,
  aTry
} from '../practice/samples';

const now = '2030-06-01T10:00:00.000Z';
const throughJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a record as a document', () => {
  test('reads back as what was written', () => {
    const record = aRecord({
      outfits: [anOutfit('o1')],
      plans: [aPlan('plan-of-one-morning')],
      entries: [anEntry('entry-of-one-morning')],
      draft: aDraft({ bites: 4 }),
      sessions: [aSession('session-of-one-day')],
      club: [{ session: aSession('session-of-another'), jig: 'Half ounce' }],
      setAside: [{ what: 'tries.3', why: 'at: missing', at: now, value: [1, 2] }]
    });
    expect(readDocument(throughJson(toDocument(record)), now)).toEqual(record);
  });

  test('may leave parts out', () => {
    const read = readDocument({ format: 'feltfoot-record', version: 1 }, now);
    expect(read).toMatchObject({ tries: [], predictions: [], progress: [], setAside: [] });
    expect(read.settings).toEqual({ units: 'imperial', scheme: 'auto' });
  });

  test('reads a lesson of which no station was gone on to', () => {
    const progress = [{ lesson: 'one-foot', reached: [], at: now, finished: null }];
    const read = readDocument(throughJson(toDocument(aRecord({ progress }))), now);
    expect(read).toMatchObject({ progress, setAside: [] });
  });

  const broken: [string, unknown, string][] = [
    ['without its rod input', { ...aTry('t2'), input: undefined }, 'input: '],
    ['from no time', { ...aTry('t2'), at: 'yesterday' }, 'at: must be a UTC time'],
    [
      'with both angles held, which no hand ever makes',
      { ...aTry('t2'), input: { ...aTry('t2').input, azimuth_deg: 4.5 } },
      'input: elevation_deg or azimuth_deg must be a list'
    ],
    ['with a key nobody knows', { ...aTry('t2'), stars: 5 }, 'stars: '],
    ['with more marks than there are', { ...aTry('t2'), marks: 101 }, 'marks: '],
    ['that is no object', 'lost', 'Invalid type']
  ];
  test.each(broken)('sets a try %s aside, whole and with the reason', (_, spoilt, reason) => {
    const document = { ...toDocument(aRecord()), tries: [aTry('t1'), spoilt, aTry('t3')] };
    const { tries, setAside } = readDocument(document, now);
    expect(tries.map(({ id }) => id)).toEqual(['t1', 't3']);
    expect(setAside).toMatchObject([{ what: 'tries.1', at: now, value: spoilt }]);
    expect(setAside[0].why).toContain(reason);
  });

  test('sets aside settings and lists that do not parse, and reads the rest', () => {
    const settings = { units: 'cubits', scheme: 'dark' };
    const document = { ...toDocument(aRecord()), settings, predictions: 'none' };
    const { setAside, tries } = readDocument(document, now);
    expect(setAside.map(({ what, value }) => [what, value])).toEqual([
      ['settings', settings],
      ['predictions', 'none']
    ]);
    expect(tries).toHaveLength(2);
  });

  test.each([
    ['document', null],
    ['document', [1]],
    ['format', { version: 1 }],
    ['version', { format: 'feltfoot-record', version: 7 }],
    ['version', { format: 'feltfoot-record', version: 'one' }]
  ])('is refused for its %s, naming the field: %j', (field, document) => {
    let error: unknown;
    try {
      readDocument(document, now);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(RecordError);
    expect((error as RecordError).field).toBe(field);
  });

  test('of version 1, before there were questions, reads with no answers', () => {
    const { answers, ...first } = toDocument(aRecord({ answers: [anAnswer('a1')] }));
    const read = readDocument(throughJson({ ...first, version: 1 }), now);
    expect(answers).toHaveLength(1);
    expect(read).toEqual(aRecord({ answers: [] }));
  });

  test('of version 2, before there was gear of one’s own, reads with none', () => {
    const { outfits, sessions, ...second } = toDocument(
      aRecord({ outfits: [anOutfit('o1')], sessions: [aSession('session-of-one-day')] })
    );
    const read = readDocument(throughJson({ ...second, version: 2 }), now);
    expect([outfits, sessions].map(({ length }) => length)).toEqual([1, 1]);
    expect(read).toEqual(aRecord());
  });

  test('of version 3, before there were plans and a log, reads with neither', () => {
    const { plans, entries, ...third } = toDocument(
      aRecord({
        plans: [aPlan('plan-of-one-morning')],
        entries: [anEntry('entry-of-one-morning')],
        sessions: [aSession('session-of-one-day')]
      })
    );
    const read = readDocument(throughJson({ ...third, version: 3 }), now);
    expect([plans, entries].map(({ length }) => length)).toEqual([1, 1]);
    expect(read).toEqual(aRecord({ sessions: [aSession('session-of-one-day')] }));
  });

  test('of version 4, before tries kept their marks, loses nothing', () => {
    const record = aRecord({
      outfits: [anOutfit('o1')],
      sessions: [aSession('session-of-one-day')],
      plans: [aPlan('plan-of-one-morning')],
      entries: [anEntry('entry-of-one-morning')],
      answers: [anAnswer('a1')],
      tries: [aTry('t1', { guess_m: 0.4, phase: 'kept' }), aTry('t2', { model: '1.3.1' })]
    });
    const fourth = { ...toDocument(record), version: 4 };
    expect(readDocument(throughJson(fourth), now)).toEqual(record);
  });

  test('of version 5, before there were drafts and clubs, reads with neither', () => {
    const record = aRecord({ entries: [anEntry('entry-of-one-morning')] });
    const { draft, club, ...fifth } = toDocument({ ...record, draft: aDraft() });
    expect([draft?.bites, club]).toEqual([2, []]);
    expect(readDocument(throughJson({ ...fifth, version: 5 }), now)).toEqual(record);
  });

  test('keeps the marks of a try with the version that gave them', () => {
    const tries = [aTry('t1', { marks: 83, model: '1.3.1' })];
    const read = readDocument(throughJson(toDocument(aRecord({ tries }))), now);
    expect(read.tries).toEqual(tries);
  });

  const badGear: [string, object, string][] = [
    ['outfits', { ...anOutfit('o1'), rod: { length_m: 2, held_m: 1.95 } }, 'rod: must reach 0.1 m'],
    ['outfits', { ...anOutfit('o1'), jig: { mass_kg: 14 } }, 'jig.mass_kg: must be from'],
    [
      'sessions',
      { ...aSession('session-of-one-day'), gear: { bait: { mass_kg: 14 } } },
      'gear.water: is missing'
    ],
    [
      'sessions',
      { ...aSession('session-of-one-day'), tests: [{ move: { kind: 'lift' }, travel_m: 1 }] },
      'tests.0.move'
    ]
  ];
  test('sets an entry of the log aside with more fish than bites', () => {
    const spoilt = { ...anEntry('entry-of-one-morning'), fish: 3 };
    const { setAside } = readDocument({ ...toDocument(aRecord()), entries: [spoilt] }, now);
    expect(setAside).toMatchObject([{ what: 'entries.0', why: 'fish must be bites, too' }]);
  });

  test.each(badGear)('sets aside one of its %s that cannot be', (what, spoilt, reason) => {
    const { setAside } = readDocument({ ...toDocument(aRecord()), [what]: [spoilt] }, now);
    expect(setAside).toMatchObject([{ what: `${what}.0`, value: spoilt }]);
    expect(setAside[0].why).toContain(reason);
  });

  test('of an older version is brought up to date step by step before it is read', () => {
    const renameLesson = ({ guesses, ...rest }: Record<string, unknown>) => ({
      ...rest,
      predictions: guesses
    });
    const old = {
      format: 'feltfoot-record',
      version: 1,
      guesses: [{ lesson: 'slack', station: 'predict', option: 'half', at: now }]
    };
    expect(readDocument(old, now, [renameLesson]).predictions).toEqual(old.guesses);
    const current = { ...old, version: 2, guesses: undefined, predictions: old.guesses };
    expect(readDocument(current, now, [renameLesson]).predictions).toEqual(old.guesses);
  });
});
