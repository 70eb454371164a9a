import { sql } from 'kysely';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from 'vitest';
import { Refusal } from '../../src/lib/server/faults';
import {
  createAssignment,
  assignmentOf,
  assignmentsOf,
  extend
} from '../../src/lib/server/assignments';
import { enter, forgetClient } from '../../src/lib/server/clients';
import { takeSent } from '../../src/lib/server/homework';
import { daysAfter, deleteExpired, deleteSpace } from '../../src/lib/server/retention';
import {
  createSpace,
  guideOf,
  renewSecret,
  SESSION_DAYS,
  startSession,
  type Guide
} from '../../src/lib/server/spaces';
import {
  addPasskey,
  beginAdding,
  beginOpening,
  openByPasskey
} from '../../src/lib/server/passkeys';
import { createRoom } from '../../src/lib/server/rooms';
import { openStore, type Store, type StorePlace } from '../../src/lib/server/store';
import { accept } from '../../src/lib/server/submissions';
import { TABLE_NAMES } from '../../src/lib/server/tables';
import { newToken } from '../../src/lib/server/token';
import { sampleTask } from './samples';
import { SoftKey } from './soft-key';
import { sqlite, storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';

/** What comes too late may be refused; any other fault is one of ours. */
const onlyRefused = (fault: unknown) => expect(fault).toBeInstanceOf(Refusal);

describe.each(storeKinds)('a store on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    let server: Awaited<ReturnType<typeof kind.start>>;
    let place: StorePlace;
    let store: Store;

    beforeAll(async () => void (server = await kind.start()), 60_000);
    afterAll(() => server?.stop(), 60_000);
    beforeEach(async () => {
      place = await server.fresh();
      store = await openStore(place);
    });
    afterEach(() => store.close());

    async function restart(): Promise<void> {
      await store.close();
      store = await openStore(place);
    }

    async function newGuide(name: string): Promise<Guide & { secret: string; cookie: string }> {
      const secret = await createSpace(store.db, name, NOW);
      const cookie = (await startSession(store.db, secret, NOW)) ?? '';
      const guide = await guideOf(store.db, cookie, NOW);
      if (!guide) throw new Error('the new guide is not known');
      return { ...guide, secret, cookie };
    }

    const rowsOf = async () => {
      const all = TABLE_NAMES.map((table) => store.db.selectFrom(table).selectAll().execute());
      return JSON.stringify(await Promise.all(all));
    };

    test('opens twice without harm', async () => {
      const { cookie } = await newGuide('Pike & Co');
      await restart();
      expect(await guideOf(store.db, cookie, NOW)).toMatchObject({ name: 'Pike & Co' });
    });

    test('holds no secret in the clear', async () => {
      const guide = await newGuide('Reed');
      const id = await createAssignment(store.db, guide, sampleTask, NOW);
      const share = (await assignmentOf(store.db, guide, id))?.share ?? '';
      const client = newToken();
      await enter(store.db, share, client, 'Ina', NOW);
      const rows = await rowsOf();
      expect(rows).toContain('Ina');
      for (const secret of [guide.secret, guide.cookie, guide.shareKey, share, client]) {
        expect(secret.length).toBeGreaterThanOrEqual(22);
        expect(rows).not.toContain(secret);
      }
    });

    test('a cookie ends, unless it is used', async () => {
      const { cookie } = await newGuide('Reed');
      const nearlyOver = daysAfter(NOW, SESSION_DAYS - 2);
      const over = daysAfter(NOW, SESSION_DAYS + 1);
      expect(await guideOf(store.db, cookie, over)).toBeUndefined();
      expect(await guideOf(store.db, cookie, nearlyOver)).toBeDefined();
      expect(await guideOf(store.db, cookie, over)).toBeDefined();
    });

    test('a new secret voids the old one and every cookie, and keeps the client links', async () => {
      const guide = await newGuide('Reed');
      const id = await createAssignment(store.db, guide, sampleTask, NOW);
      const before = await assignmentOf(store.db, guide, id);
      const secret = await renewSecret(store.db, guide);
      expect(await startSession(store.db, guide.secret, NOW)).toBeUndefined();
      expect(await guideOf(store.db, guide.cookie, NOW)).toBeUndefined();
      const again = await guideOf(store.db, await startSession(store.db, secret, NOW), NOW);
      expect(await assignmentOf(store.db, again as Guide, id)).toEqual(before);
    });

    test('two guides never see each other’s homework', async () => {
      const [mine, other] = [await newGuide('Reed'), await newGuide('Silt')];
      const id = await createAssignment(store.db, mine, sampleTask, NOW);
      expect(await assignmentOf(store.db, mine, id)).toMatchObject({ id });
      expect(await assignmentOf(store.db, other, id)).toBeUndefined();
      expect(await assignmentsOf(store.db, other)).toEqual([]);
    });

    test('what is over its time is deleted with all that hangs on it, and nothing else', async () => {
      const guide = await newGuide('Reed');
      const task = { ...sampleTask, due: null };
      const old = await createAssignment(store.db, guide, task, daysAfter(NOW, -91));
      const young = await createAssignment(store.db, guide, task, daysAfter(NOW, -89));
      for (const parent of [old, young]) {
        const share = (await assignmentOf(store.db, guide, parent))?.share ?? '';
        const { client } = await enter(store.db, share, newToken(), 'Ina', NOW);
        const sent = { scope: client.id, id: 'a', parent, part: 'p', payload: 1 };
        await accept(store.db, sent, NOW, () => 'yes');
      }
      expect(await deleteExpired(store.db, NOW)).toBe(1);
      const left = await store.db.selectFrom('submissions').select('parent').execute();
      expect(left).toEqual([{ parent: young }]);
    });

    test('the guide’s extending keeps homework for another ninety days', async () => {
      const guide = await newGuide('Reed');
      const id = await createAssignment(store.db, guide, sampleTask, daysAfter(NOW, -89));
      await extend(store.db, guide, id, null, NOW);
      await deleteExpired(store.db, daysAfter(NOW, 89));
      expect(await assignmentOf(store.db, guide, id)).toMatchObject({ id });
      await deleteExpired(store.db, daysAfter(NOW, 91));
      expect(await assignmentOf(store.db, guide, id)).toBeUndefined();
    });

    test('a space goes ninety days after it was last used, with its clinics', async () => {
      const guide = await newGuide('Reed');
      const used = daysAfter(NOW, 20);
      expect(await guideOf(store.db, guide.cookie, used)).toBeDefined();
      await createRoom(store.db, guide, { name: '', plan: [] }, used);
      expect(await deleteExpired(store.db, daysAfter(used, 89))).toBe(0);
      // To come back by the key on the last day is a use.
      const back = daysAfter(used, 89);
      expect(await startSession(store.db, guide.secret, back)).toBeDefined();
      await deleteExpired(store.db, daysAfter(back, 89));
      expect(await startSession(store.db, guide.secret, daysAfter(back, 89))).toBeDefined();
      await deleteExpired(store.db, daysAfter(back, 180));
      expect(await rowsOf()).toBe(JSON.stringify(TABLE_NAMES.map(() => [])));
    });

    test('a space stays as long as homework with a last day months ahead, and goes after it', async () => {
      const guide = await newGuide('Reed');
      const task = { ...sampleTask, due: daysAfter(NOW, 200).slice(0, 10) };
      const id = await createAssignment(store.db, guide, task, NOW);
      await deleteExpired(store.db, daysAfter(NOW, 199));
      expect(await assignmentOf(store.db, guide, id)).toMatchObject({ id });
      await deleteExpired(store.db, daysAfter(NOW, 291));
      expect(await rowsOf()).toBe(JSON.stringify(TABLE_NAMES.map(() => [])));
    });

    test.runIf(kind === sqlite)('however many are over their time, they go', async () => {
      // More than SQLite takes values in one statement.
      await sql`
        with recursive n(i) as (select 1 union all select i + 1 from n where i < 33000)
        insert into rooms (id, space_id, code, state, created_at, ends_at, version)
        select 'room ' || i, 's', 'code ' || i, '{}', ${NOW}, ${NOW}, 1 from n
      `.execute(store.db);
      expect(await deleteExpired(store.db, daysAfter(NOW, 91))).toBe(33_000);
      expect(await store.db.selectFrom('rooms').select('id').execute()).toEqual([]);
    });

    test('a client who goes while something is on its way leaves nothing', async () => {
      const guide = await newGuide('Reed');
      const id = await createAssignment(store.db, guide, sampleTask, NOW);
      const share = (await assignmentOf(store.db, guide, id))?.share ?? '';
      for (let steps = 0; steps < 200; steps += 10) {
        const token = newToken();
        const { client } = await enter(store.db, share, token, 'Ina', NOW);
        const sent = { kind: 'finished' as const, id: newToken(), lesson: 'one-foot', at: NOW };
        const sending = takeSent(store.db, share, token, sent, NOW, 'a home').catch(onlyRefused);
        // Wherever the sending is by then.
        for (let n = 0; n < steps; n++) await Promise.resolve();
        await Promise.all([forgetClient(store.db, id, client.id), sending]);
      }
      expect(await store.db.selectFrom('submissions').select('id').execute()).toEqual([]);
    });

    test('what came in behind a deletion goes with the next sweep', async () => {
      const sent = { scope: 'gone', id: 'a', parent: 'gone', part: 'p', payload: 1 };
      await accept(store.db, sent, NOW, () => 'yes');
      await store.db
        .insertInto('seats')
        .values({ id: 's', room_id: 'gone', token_hash: 'h', joined_at: NOW, address_group: '' })
        .execute();
      await deleteExpired(store.db, NOW);
      expect(await rowsOf()).toBe(JSON.stringify(TABLE_NAMES.map(() => [])));
    });

    test('nobody slips in with the old secret in the moment in which it is renewed', async () => {
      const guide = await newGuide('Reed');
      const tried = Array.from({ length: 5 }, () => startSession(store.db, guide.secret, NOW));
      await renewSecret(store.db, guide);
      for (const cookie of await Promise.all(tried)) {
        expect(await guideOf(store.db, cookie, NOW)).toBeUndefined();
      }
    });

    test('a deleted space leaves not one row', async () => {
      const guide = await newGuide('Reed');
      const id = await createAssignment(store.db, guide, sampleTask, NOW);
      const share = (await assignmentOf(store.db, guide, id))?.share ?? '';
      const { client } = await enter(store.db, share, newToken(), 'Ina', NOW);
      const sent = { scope: client.id, id: 'a', parent: id, part: 'p', payload: 1 };
      await accept(store.db, sent, NOW, () => 'yes');
      await deleteSpace(store.db, guide.space);
      expect(await rowsOf()).toBe(JSON.stringify(TABLE_NAMES.map(() => [])));
    });

    test('a passkey opens the space, and goes with it', async () => {
      const guide = await newGuide('Reed');
      const site = { host: 'localhost', origin: 'http://localhost' };
      const key = new SoftKey();
      const adding = await beginAdding(store.db, guide, site, NOW);
      const made = key.made(adding.options.challenge, site.origin);
      await addPasskey(store.db, guide, site, made, adding.token, NOW);
      const { options, token } = await beginOpening(store.db, site, NOW);
      const used = key.used(options.challenge, site.origin);
      const cookie = await openByPasskey(store.db, site, used, token, NOW);
      expect(await guideOf(store.db, cookie, NOW)).toEqual(
        await guideOf(store.db, guide.cookie, NOW)
      );
      await deleteSpace(store.db, guide.space);
      expect(await rowsOf()).toBe(JSON.stringify(TABLE_NAMES.map(() => [])));
    });

    test('the same submission sent by many ways at once counts once', async () => {
      const sent = { scope: 'c', id: 'a', parent: 'p', part: 'q', payload: { x: 1 } };
      const answers = Array.from({ length: 12 }, (_, i) => accept(store.db, sent, NOW, () => i));
      const receipts = await Promise.all(answers);
      expect(receipts.filter(({ kind }) => kind === 'accepted')).toHaveLength(1);
      expect(new Set(receipts.map((one) => 'reply' in one && one.reply)).size).toBe(1);
    });
  });
});
