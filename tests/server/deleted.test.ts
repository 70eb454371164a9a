import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { createAssignment, assignmentOf } from '../../src/lib/server/assignments';
import { enter, forgetClient } from '../../src/lib/server/clients';
import { deleteExpired, deleteSpace } from '../../src/lib/server/retention';
import { createSpace, guideOf, startSession } from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { accept } from '../../src/lib/server/submissions';
import { newToken } from '../../src/lib/server/token';
import { sampleTask } from './samples';

const NOW = '2031-05-01T08:00:00.000Z';
const NAME = 'Ina of the seventh jetty';
const folders = mkdtempSync(join(tmpdir(), 'feltfoot-deleted-'));
afterAll(() => rmSync(folders, { recursive: true }));
const newFolder = () => mkdtempSync(join(folders, 'store-'));

/** Every file of a store, as bytes. */
const bytesIn = (folder: string) =>
  readdirSync(folder).map((name) => ({ name, bytes: readFileSync(join(folder, name), 'latin1') }));

const holding = (folder: string, text: string) =>
  bytesIn(folder).flatMap(({ name, bytes }) => (bytes.includes(text) ? [name] : []));

async function withClient(store: Store) {
  const { db } = store;
  const cookie = (await startSession(db, await createSpace(db, 'Reed', NOW), NOW)) ?? '';
  const guide = await guideOf(db, cookie, NOW);
  if (!guide) throw new Error('no guide');
  const homework = await createAssignment(db, guide, { ...sampleTask, due: null }, NOW);
  const { share } = (await assignmentOf(db, guide, homework)) ?? { share: '' };
  const token = newToken();
  const { client } = await enter(db, share, token, NAME, NOW);
  for (let i = 0; i < 40; i++) {
    const sent = { scope: client.id, id: newToken(), parent: homework, part: 'a' };
    const payload = { said: `${NAME} at try ${i}`.repeat(60) };
    await accept(db, { ...sent, payload }, NOW, () => ({ done: true }));
  }
  return { guide, homework, client: client.id };
}

describe('after a deletion no byte of it is in any file of the store', () => {
  test.each([
    ['a client', (store: Store, made: Made) => forgetClient(store.db, made.homework, made.client)],
    ['a space', (store: Store, made: Made) => deleteSpace(store.db, made.guide.space)],
    ['what is over its time', (store: Store) => deleteExpired(store.db, '2032-05-01T08:00:00.000Z')]
  ])('of %s', async (_, work) => {
    const folder = newFolder();
    const store = await openStore({ folder });
    const made = await withClient(store);
    expect(holding(folder, NAME)).not.toEqual([]);
    await store.deleting(async () => void (await work(store, made)));
    expect(holding(folder, NAME)).toEqual([]);
    expect(holding(folder, made.client)).toEqual([]);
    await store.close();
  });

  test('nor after the next minute, where somebody was reading meanwhile', async () => {
    const folder = newFolder();
    const [store, reader] = [await openStore({ folder }), await openStore({ folder })];
    const made = await withClient(store);
    await reader.db.transaction().execute(async (inOne) => {
      await inOne.selectFrom('clients').select('id').execute();
      await store.deleting(() => forgetClient(store.db, made.homework, made.client));
      expect(await store.checkpoint()).toBe(false);
    });
    expect(await store.checkpoint()).toBe(true);
    expect(holding(folder, NAME)).toEqual([]);
    await reader.close();
    await store.close();
  });
});

type Made = Awaited<ReturnType<typeof withClient>>;

describe('a store that is not what it was is refused with a word', () => {
  async function used(): Promise<string> {
    const folder = newFolder();
    const store = await openStore({ folder });
    await withClient(store);
    // Killed: the log is left as it is.
    const copy = newFolder();
    for (const { name } of bytesIn(folder)) {
      writeFileSync(join(copy, name), readFileSync(join(folder, name)));
    }
    await store.close();
    return copy;
  }
  const saying = { name: 'StoreLost', message: expect.stringContaining('npm run restore') };

  test('when it was emptied, and is not made anew in silence', async () => {
    const folder = await used();
    for (const end of ['', '-wal', '-shm']) rmSync(join(folder, `feltfoot.sqlite${end}`));
    await expect(openStore({ folder })).rejects.toMatchObject(saying);
    await expect(openStore({ folder })).rejects.toMatchObject(saying);
  });

  test('when its log is missing', async () => {
    const folder = await used();
    rmSync(join(folder, 'feltfoot.sqlite-wal'));
    await expect(openStore({ folder })).rejects.toMatchObject(saying);
  });

  test('but not when it was killed, nor when it is about to be put back', async () => {
    const [killed, emptied] = [await used(), await used()];
    const again = await openStore({ folder: killed });
    expect(await again.db.selectFrom('clients').select('nickname').execute()).toEqual([
      { nickname: NAME }
    ]);
    await again.close();
    rmSync(join(emptied, 'feltfoot.sqlite'));
    rmSync(join(emptied, 'feltfoot.sqlite-wal'));
    await (await openStore({ folder: emptied, isNew: true })).close();
    await expect(openStore({ folder: emptied }).then((it) => it.close())).resolves.toBe(undefined);
  });
});

/** A disk of a few megabytes, for a child of ours alone: taken from memory, gone with it. */
const small = ['unshare', '--map-root-user', '--mount', 'sh', '-c'] as const;
const mount = 'mount -t tmpfs -o size=12m none "$0"';
const canMount = spawnSync(small[0], [...small.slice(1), mount, newFolder()]).status === 0;
if (!canMount) console.warn('\n!!! NOT TESTED ON A FULL DISK: no small disk can be mounted !!!\n');

(canMount ? test : test.skip)(
  'on a disk that is really full, a client is deleted',
  () => {
    const disk = join(folders, 'disk');
    mkdirSync(disk);
    const child = `${mount} && exec node --import tsx tests/server/full-disk.ts "$0"`;
    const { stdout, stderr } = spawnSync(small[0], [...small.slice(1), child, disk], {
      encoding: 'utf8'
    });
    expect({ stdout, stderr }).toMatchObject({
      stdout: 'refused: SQLITE_FULL\ndeleted: 0 clients, 0 submissions\nleft: \n'
    });
  },
  60_000
);
