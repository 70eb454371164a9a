import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createAssignment } from '../../src/lib/server/assignments';
import { backupLines, linesIn, restoreLines } from '../../src/lib/server/backup';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { sampleTask } from './samples';
import { sqlite, storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';

describe.each(storeKinds)('a backup on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    let server: Awaited<ReturnType<typeof kind.start>>;
    let full: Store;
    let secret: string;

    beforeAll(async () => {
      server = await kind.start();
      full = await openStore(await server.fresh());
      secret = await createSpace(full.db, 'Reed', NOW);
      const cookie = await startSession(full.db, secret, NOW);
      const guide = (await guideOf(full.db, cookie, NOW)) as Guide;
      const parent = await createAssignment(full.db, guide, sampleTask, NOW);
      const row = {
        scope: 'c',
        parent,
        part: 'p',
        payload_hash: 'h',
        reply: '{}',
        received_at: NOW
      };
      const payload = JSON.stringify({ text: 'Ünï “x”\n' });
      const rows = Array.from({ length: 1200 }, (_, i) => ({ ...row, id: String(i), payload }));
      await full.db.insertInto('submissions').values(rows).execute();
    });
    afterAll(async () => {
      await full?.close();
      await server?.stop();
    });

    test('puts every row back as it was, into this kind of store and into the other', async () => {
      const lines = linesIn(Buffer.from(`${(await backupLines(full.db)).join('\n')}\n`));
      expect(lines).toHaveLength(1 + 1203 + 1);
      const other = await sqlite.start();
      for (const place of [await server.fresh(), await other.fresh()]) {
        const empty = await openStore(place);
        expect(await restoreLines(empty.db, lines)).toBe(1203);
        // The order of rows is the store's own affair.
        const again = await backupLines(empty.db);
        expect(again.slice(1, -1).sort()).toEqual(lines.slice(1, -1).sort());
        expect(await startSession(empty.db, secret, NOW)).toBeDefined();
        await empty.close();
      }
      await other.stop();
    });

    test('is refused when a line is missing or changed, and puts back nothing', async () => {
      const lines = await backupLines(full.db);
      const changed = lines.map((line, i) => (i === 3 ? line.replace('Reed', 'Weed') : line));
      const empty = await openStore(await server.fresh());
      for (const bad of [
        lines.toSpliced(5, 1),
        lines.slice(0, -1),
        changed.with(3, `${changed[3]} `)
      ]) {
        await expect(restoreLines(empty.db, bad)).rejects.toThrow(/backup/i);
      }
      expect(await backupLines(empty.db)).toHaveLength(2);
      await empty.close();
    });

    test('of a later version, with rows that nobody here knows, is refused as a whole', async () => {
      const body = [...(await backupLines(full.db)).slice(0, -1), '["boats",{"id":"1"}]'];
      const sha256 = createHash('sha256').update(body.join('\n')).digest('hex');
      const lines = [...body, JSON.stringify({ rows: body.length - 1, sha256 })];
      const empty = await openStore(await server.fresh());
      await expect(restoreLines(empty.db, lines)).rejects.toThrow('boats');
      expect(await backupLines(empty.db)).toHaveLength(2);
      await empty.close();
    });

    test('never goes into a store that holds something', async () => {
      const lines = await backupLines(full.db);
      await expect(restoreLines(full.db, lines)).rejects.toThrow('not empty');
      expect(await backupLines(full.db)).toEqual(lines);
    });
  });
});
