import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createAssignment, assignmentOf } from '../../src/lib/server/assignments';
import { backupLines, restoreLines } from '../../src/lib/server/backup';
import { enter, forgetClient } from '../../src/lib/server/clients';
import {
  DELETIONS_FILE,
  forgetOld,
  readDeletions,
  REMEMBERED_DAYS
} from '../../src/lib/server/deletions';
import { daysAfter, deleteAssignments } from '../../src/lib/server/retention';
import {
  createSpace,
  endSession,
  guideOf,
  renewSecret,
  sessionHolds,
  startSession,
  type Guide
} from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { accept } from '../../src/lib/server/submissions';
import { newToken } from '../../src/lib/server/token';
import { sampleTask } from './samples';
import { storeKinds } from './stores';

/** Triggers go by the true time, so the backup does too. */
const now = () => new Date().toISOString();

describe.each(storeKinds)('what was deleted from $name since a backup', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('stays deleted when the backup is put back', () => {
    let server: Awaited<ReturnType<typeof kind.start>>;
    beforeAll(async () => {
      server = await kind.start();
    });
    afterAll(() => server?.stop());

    /** A space with two homeworks of two clients each. */
    async function used() {
      const place = await server.fresh();
      const store = await openStore(place);
      const secret = await createSpace(store.db, 'Reed', now());
      const cookie = (await startSession(store.db, secret, now())) ?? '';
      const guide = (await guideOf(store.db, cookie, now())) as Guide;
      const homework = [await homeworkIn(store, guide), await homeworkIn(store, guide)];
      return { place, store, secret, cookie, guide, homework };
    }
    type Used = Awaited<ReturnType<typeof used>>;

    async function homeworkIn({ db }: Store, guide: Guide) {
      const id = await createAssignment(db, guide, { ...sampleTask, due: null }, now());
      const { share } = (await assignmentOf(db, guide, id)) ?? { share: '' };
      const clients = await Promise.all(
        ['Ina', 'Ole'].map(async (name) => (await enter(db, share, newToken(), name, now())).client)
      );
      for (const { id: scope } of clients) {
        const sent = { scope, id: newToken(), parent: id, part: 'a', payload: { said: scope } };
        await accept(db, sent, now(), () => ({ done: true }));
      }
      return { id, clients: clients.map((one) => one.id) };
    }

    const backup = (store: Store) =>
      backupLines(store.db, { made: now(), until: daysAfter(now(), 90) });

    /** The backup in a new store, after what was deleted meanwhile. */
    async function putBack({ place, store }: Used, lines: string[]) {
      await store.checkpoint();
      const deletions = readDeletions(join(place.folder, DELETIONS_FILE));
      await store.close();
      const again = await openStore(await server.fresh());
      const told = await restoreLines(again.db, lines, { deletions, now: now() });
      return { again, told };
    }

    const idsIn = async ({ db }: Store, table: 'clients' | 'assignments' | 'submissions') => {
      const id = table === 'submissions' ? 'scope' : 'id';
      const rows = await db.selectFrom(table).select(`${id} as id`).execute();
      return rows.map((row) => row.id);
    };

    test('a client and a homework, with all that belonged to them', async () => {
      const made = await used();
      const lines = await backup(made.store);
      const [first, second] = made.homework;
      await made.store.deleting(() => forgetClient(made.store.db, first.id, first.clients[0]));
      await made.store.deleting(() => deleteAssignments(made.store.db, [second.id]));
      const { again, told } = await putBack(made, lines);
      expect(await idsIn(again, 'assignments')).toEqual([first.id]);
      expect(await idsIn(again, 'clients')).toEqual([first.clients[1]]);
      expect(await idsIn(again, 'submissions')).toEqual([first.clients[1]]);
      // A client and its try; a homework, its two clients and their tries.
      expect(told.deleted).toBe(7);
      await again.close();
    });

    test('a cookie that was ended; and with a new secret the old one and its cookies', async () => {
      const ended = await used();
      const lines = await backup(ended.store);
      await endSession(ended.store.db, ended.cookie);
      const { again } = await putBack(ended, lines);
      expect(await sessionHolds(again.db, ended.cookie, now())).toBe(false);
      expect(await startSession(again.db, ended.secret, now())).toBeDefined();
      await again.close();

      const renewed = await used();
      const before = await backup(renewed.store);
      const secret = await renewSecret(renewed.store.db, renewed.guide);
      const { again: back } = await putBack(renewed, before);
      expect(await sessionHolds(back.db, renewed.cookie, now())).toBe(false);
      expect(await startSession(back.db, renewed.secret, now())).toBeUndefined();
      const guide = await guideOf(back.db, await startSession(back.db, secret, now()), now());
      expect(guide).toMatchObject({ name: 'Reed', shareKey: renewed.guide.shareKey });
      await back.close();
    });

    test('but what came after a deletion, and is in the backup, is put back', async () => {
      const made = await used();
      const [first] = made.homework;
      await made.store.deleting(() => forgetClient(made.store.db, first.id, first.clients[0]));
      const lines = await backup(made.store);
      const { again, told } = await putBack(made, lines);
      expect(told.deleted).toBe(0);
      expect(await idsIn(again, 'clients')).toHaveLength(3);
      await again.close();
    });

    test('as the file beside the store says, without an id, a name or an end', async () => {
      const made = await used();
      const [{ id, clients }] = made.homework;
      await made.store.deleting(() => forgetClient(made.store.db, id, clients[0]));
      expect(await made.store.db.selectFrom('deletions').selectAll().execute()).toEqual([]);
      const file = join(made.place.folder, DELETIONS_FILE);
      const told = readDeletions(file);
      expect(told.at(-1)).toMatchObject({ kind: 'client', hash: expect.any(String) });
      expect(JSON.stringify(told)).not.toContain(clients[0]);
      const late = daysAfter(now(), REMEMBERED_DAYS + 1);
      forgetOld(made.place.folder, late);
      expect(readDeletions(file)).toEqual([]);
      expect(readdirSync(made.place.folder)).not.toContain(`${DELETIONS_FILE}.new`);
      await made.store.close();
    });
  });
});
