import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { RecordChange } from '../../src/lib/practice';
import { toDocument } from '../../src/lib/wire';
import { RecordStore } from '../../src/lib/learner/store';
import { Learner } from '../../src/lib/learner/learner.svelte';
import { aDraft, anOutfit, aRecord, aSession, aTry } from '../practice/samples';

const now = '2030-06-01T10:00:00.000Z';
let name: string;
let count = 0;
beforeEach(() => {
  vi.restoreAllMocks();
  name = `record-under-test-${Date.now()}-${count++}`;
});

/** A learner on a page that has just been opened. */
async function opened(): Promise<Learner> {
  const learner = new Learner(name);
  learner.open();
  await learner.settled();
  return learner;
}

describe('the stored record', () => {
  test('is empty at first and then what was written to it', async () => {
    const store = await RecordStore.open(name);
    expect((await store.load(now)).tries).toEqual([]);
    await store.write([{ kind: 'imported', record: aRecord() }]);
    await store.write([{ kind: 'tried', try: aTry('t3', { at: now }) }]);
    store.close();
    const again = await (await RecordStore.open(name)).load(now);
    expect(again).toEqual(
      aRecord({
        settings: { units: 'imperial', scheme: 'auto' },
        tries: [...aRecord().tries, aTry('t3', { at: now })]
      })
    );
  });

  test('keeps sessions one by one, as they were last kept, and lets go of one that is dropped', async () => {
    const [a, b] = ['session-of-one-day', 'session-of-another'];
    const store = await RecordStore.open(name);
    await store.write([
      { kind: 'session kept', session: aSession(a) },
      { kind: 'session kept', session: aSession(b) }
    ]);
    await store.write([{ kind: 'tried', try: aTry('t1') }]);
    const later = aSession(a, { notes: 'Wind', at: now });
    await store.write([{ kind: 'session kept', session: later }]);
    await store.write([{ kind: 'session dropped', id: b }]);
    expect((await store.load(now)).sessions).toEqual([later]);
    await store.write([{ kind: 'erased' }]);
    expect((await store.load(now)).sessions).toEqual([]);
    store.close();
  });

  test('keeps a club’s sessions beside one’s own, and a spell half filled in', async () => {
    const [a, b] = ['session-of-one-day', 'session-of-another'];
    const store = await RecordStore.open(name);
    const of = (id: string, jig: string) => ({ session: aSession(id), jig });
    await store.write([
      { kind: 'session kept', session: aSession(a) },
      { kind: 'club kept', one: of(a, 'Half') },
      { kind: 'club kept', one: of(b, 'Half') }
    ]);
    await store.write([{ kind: 'drafted', draft: aDraft({ bites: 4 }) }]);
    await store.write([
      { kind: 'club kept', one: of(a, 'Half ounce') },
      { kind: 'club dropped', id: b }
    ]);
    const { club, sessions, draft } = await store.load(now);
    expect([club, sessions, draft?.bites]).toEqual([[of(a, 'Half ounce')], [aSession(a)], 4]);
    await store.write([{ kind: 'erased' }]);
    expect(await store.load(now)).toMatchObject({ club: [], sessions: [], draft: null });
    store.close();
  });

  test('of a browser that had no place for sessions yet gets one, and loses nothing', async () => {
    const old = await openDB(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore('notes');
        fresh.createObjectStore('tries', { keyPath: 'id' });
      }
    });
    const { tries, sessions, club, outfits, ...notes } = toDocument(
      aRecord({ tries: [aTry('t1')] })
    );
    expect([sessions, club, outfits]).toEqual([[], [], []]);
    await old.put('notes', { ...notes, version: 2 }, 'notes');
    await old.put('tries', tries[0]);
    old.close();
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'outfit kept', outfit: anOutfit('o1') }]);
    const { tries: kept, outfits: own } = await store.load(now);
    expect([kept, own]).toEqual([[aTry('t1')], [anOutfit('o1')]]);
    store.close();
  });

  test('keeps what two tabs wrote, each from its own old copy', async () => {
    const [one, two] = [await RecordStore.open(name), await RecordStore.open(name)];
    await Promise.all([one.load(now), two.load(now)]);
    await one.write([{ kind: 'set', settings: { units: 'metric' } }]);
    await two.write([{ kind: 'set', settings: { scheme: 'dark' } }]);
    expect((await one.load(now)).settings).toEqual({ units: 'metric', scheme: 'dark' });
  });

  test('sets a spoilt try aside once and for all, and keeps the others', async () => {
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'tried', try: aTry('t1') }]);
    const behind = await openDB(name);
    await behind.put('tries', { id: 't2', challenge: 7, at: now });
    behind.close();
    const first = await store.load(now);
    expect(first.tries.map(({ id }) => id)).toEqual(['t1']);
    expect(first.setAside).toMatchObject([{ what: 'tries.1', value: { id: 't2', challenge: 7 } }]);
    expect((await store.load(now)).setAside).toEqual(first.setAside);
  });

  test('with a try whose angles were both held opens, and a word is said of it', async () => {
    const still = { ...aTry('still').input, azimuth_deg: 4.5 };
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'tried', try: aTry('still', { input: still }) }]);
    store.close();
    const learner = await opened();
    expect(learner.trouble).toBe('set-aside');
    expect(learner.record.tries).toEqual([]);
    expect(learner.record.setAside).toMatchObject([{ what: 'tries.0', value: { id: 'still' } }]);
  });

  test('of a newer Feltfoot is set aside whole', async () => {
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'tried', try: aTry('t1') }]);
    const behind = await openDB(name);
    await behind.put('notes', { format: 'feltfoot-record', version: 99 }, 'notes');
    behind.close();
    const { tries, setAside } = await store.load(now);
    expect(tries).toEqual([]);
    expect(setAside).toMatchObject([{ what: 'document', value: { version: 99, tries: [{}] } }]);
  });

  test('forgets everything when it is erased', async () => {
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'imported', record: aRecord() }]);
    await store.write([{ kind: 'erased' }]);
    expect(await store.load(now)).toMatchObject({ tries: [], predictions: [], progress: [] });
  });
});

describe('the learner on a page', () => {
  test('finds every change again after a reload', async () => {
    const before = await opened();
    before.change({ kind: 'set', settings: { units: 'metric' } });
    const { id } = before.tried({ challenge: 'drag', input: aTry('x').input, model: '1.0.0' });
    await before.settled();
    const after = await opened();
    expect(after.record.settings.units).toBe('metric');
    expect(after.record.tries.map((one) => one.id)).toEqual([id]);
  });

  describe('that goes before its changes are written', () => {
    const inStorage = () => Object.keys(localStorage).filter((key) => key.startsWith(name));
    afterEach(() => inStorage().forEach((key) => localStorage.removeItem(key)));

    /** A page that goes while the disk has not yet answered. */
    async function leaving(...changes: RecordChange[]) {
      const learner = await opened();
      vi.spyOn(RecordStore.prototype, 'write').mockReturnValue(new Promise(() => {}));
      for (const change of changes) learner.change(change);
      dispatchEvent(new PageTransitionEvent('pagehide'));
      vi.restoreAllMocks();
    }

    test('leaves them to the next page, which writes them', async () => {
      await leaving(
        { kind: 'tried', try: aTry('t1', { at: now }) },
        { kind: 'drafted', draft: aDraft() }
      );
      const next = await opened();
      await next.settled();
      expect(next.record.tries).toEqual([aTry('t1', { at: now })]);
      expect(next.record.draft).toEqual(aDraft());
      const stored = await (await RecordStore.open(name)).load(now);
      expect(stored.tries).toHaveLength(1);
      expect(inStorage()).toEqual([]);
    });

    test('leaves nothing where all was written', async () => {
      const learner = await opened();
      learner.change({ kind: 'tried', try: aTry('t1') });
      dispatchEvent(new PageTransitionEvent('pagehide', { persisted: true }));
      expect(inStorage()).toHaveLength(1);
      await learner.settled();
      expect(inStorage()).toEqual([]);
    });

    test('does no harm where what it left was spoilt', async () => {
      localStorage.setItem(
        `${name}-left-behind-a`,
        '[{"kind":"tried","try":{"id":7}},{"kind":"?"},3]'
      );
      localStorage.setItem(`${name}-left-behind-b`, '{"kind"');
      await leaving({ kind: 'tried', try: aTry('t1') });
      const next = await opened();
      await next.settled();
      expect(next.record.tries).toEqual([aTry('t1')]);
      expect(next.record.setAside).toEqual([]);
      expect(next.trouble).toBeNull();
    });
  });

  test('keeps what was done before the stored record had been read', async () => {
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'tried', try: aTry('t1') }]);
    const learner = new Learner(name);
    learner.change({ kind: 'set', settings: { units: 'metric' } });
    learner.open();
    await learner.settled();
    learner.change({ kind: 'set', settings: { scheme: 'dark' } });
    await learner.settled();
    expect(learner.record.settings).toEqual({ units: 'metric', scheme: 'dark' });
    expect((await store.load(now)).settings).toEqual({ units: 'metric', scheme: 'dark' });
    expect(learner.record.tries).toHaveLength(1);
  });

  test('sees at once what is done in another tab', async () => {
    const [here, there] = [await opened(), await opened()];
    there.change({
      kind: 'predicted',
      prediction: { lesson: 'slack', station: 'predict', option: 'half', at: now }
    });
    await expect.poll(() => here.record.predictions).toHaveLength(1);
  });

  test('works from memory, and says so, where the browser keeps nothing', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('no', 'SecurityError');
    });
    const learner = await opened();
    expect(learner.trouble).toBe('no-storage');
    learner.change({ kind: 'tried', try: aTry('t1') });
    await learner.settled();
    expect(learner.record.tries).toHaveLength(1);
  });

  test('says that the code for the record did not come, and reads and writes it once there is a connection', async () => {
    const store = await RecordStore.open(name);
    await store.write([{ kind: 'tried', try: aTry('t1') }]);
    let isOnline = false;
    const learner = new Learner(name, () =>
      isOnline
        ? import('../../src/lib/learner/store')
        : Promise.reject(new TypeError('Failed to fetch dynamically imported module'))
    );
    learner.open();
    await learner.settled();
    expect(learner.trouble).toBe('not-loaded');
    learner.change({ kind: 'tried', try: aTry('t2') });
    await learner.settled();
    expect(learner.trouble).toBe('not-loaded');
    isOnline = true;
    dispatchEvent(new Event('online'));
    await learner.settled();
    expect(learner.trouble).toBeNull();
    expect(learner.record.tries.map(({ id }) => id).sort()).toEqual(['t1', 't2']);
    expect((await store.load(now)).tries).toHaveLength(2);
  });

  test('says that a record of a newer version is here and cannot be read, and leaves it as it is', async () => {
    const newer = await openDB(name, 99);
    newer.close();
    const learner = await opened();
    expect(learner.trouble).toBe('unread');
    learner.change({ kind: 'tried', try: aTry('t1') });
    await learner.settled();
    expect(learner.record.tries).toHaveLength(1);
    expect((await openDB(name)).version).toBe(99);
  });

  test('says that reading failed where the disk gives nothing back, not that nothing is kept', async () => {
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(() => {
      throw new DOMException('disk', 'UnknownError');
    });
    expect((await opened()).trouble).toBe('unread');
  });

  test('says that the whole record was set aside where none of it can be read', async () => {
    const tables = await RecordStore.open(name);
    await tables.write([{ kind: 'imported', record: aRecord() }]);
    tables.close();
    const db = await openDB(name);
    await db.put('notes', { version: 99 }, 'notes');
    db.close();
    expect((await opened()).trouble).toBe('all-set-aside');
  });

  test('says when the disk is full, and writes all of it once there is room', async () => {
    const learner = await opened();
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    learner.change({ kind: 'tried', try: aTry('t1') });
    await learner.settled();
    expect(learner.trouble).toBe('not-saved');
    full.mockRestore();
    learner.change({ kind: 'tried', try: aTry('t2') });
    await learner.settled();
    expect(learner.trouble).toBeNull();
    expect((await opened()).record.tries.map(({ id }) => id)).toEqual(['t1', 't2']);
  });
});
