import { generateIdentity, identityToRecipient } from 'age-encryption';
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createAssignment } from '../../src/lib/server/assignments';
import { backupLines, linesIn, restoreLines } from '../../src/lib/server/backup';
import { createSpace, guideOf, startSession, type Guide } from '../../src/lib/server/spaces';
import { openStore, type Store } from '../../src/lib/server/store';
import { seal, unseal } from '../../scripts/sealed';
import { sampleTask } from './samples';
import { sqlite, storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';
const KEPT = { made: NOW, until: '2031-08-01T08:00:00.000Z' };
const NONE = { deletions: [], now: NOW };

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
      const lines = linesIn(Buffer.from(`${(await backupLines(full.db, KEPT)).join('\n')}\n`));
      expect(lines).toHaveLength(1 + 1203 + 1);
      const other = await sqlite.start();
      for (const place of [await server.fresh(), await other.fresh()]) {
        const empty = await openStore(place);
        expect(await restoreLines(empty.db, lines, NONE)).toEqual({ rows: 1203, deleted: 0 });
        // The order of rows is the store's own affair.
        const again = await backupLines(empty.db, KEPT);
        expect(again.slice(1, -1).sort()).toEqual(lines.slice(1, -1).sort());
        expect(await startSession(empty.db, secret, NOW)).toBeDefined();
        await empty.close();
      }
      await other.stop();
    });

    test('is refused when a line is missing or changed, and puts back nothing', async () => {
      const lines = await backupLines(full.db, KEPT);
      const changed = lines.map((line, i) => (i === 3 ? line.replace('Reed', 'Weed') : line));
      const empty = await openStore(await server.fresh());
      for (const bad of [
        lines.toSpliced(5, 1),
        lines.slice(0, -1),
        changed.with(3, `${changed[3]} `)
      ]) {
        await expect(restoreLines(empty.db, bad, NONE)).rejects.toThrow(/backup/i);
      }
      expect(await backupLines(empty.db, KEPT)).toHaveLength(2);
      await empty.close();
    });

    test('of a later version, with rows that nobody here knows, is refused as a whole', async () => {
      const body = [...(await backupLines(full.db, KEPT)).slice(0, -1), '["boats",{"id":"1"}]'];
      const sha256 = createHash('sha256').update(body.join('\n')).digest('hex');
      const lines = [...body, JSON.stringify({ rows: body.length - 1, sha256 })];
      const empty = await openStore(await server.fresh());
      await expect(restoreLines(empty.db, lines, NONE)).rejects.toThrow('boats');
      expect(await backupLines(empty.db, KEPT)).toHaveLength(2);
      await empty.close();
    });

    test('that is over its time is refused, and puts back nothing', async () => {
      const empty = await openStore(await server.fresh());
      const lines = await backupLines(full.db, KEPT);
      const late = { ...NONE, now: '2031-08-02T00:00:00.000Z' };
      await expect(restoreLines(empty.db, lines, late)).rejects.toThrow('good until 2031-08-01');
      expect(await backupLines(empty.db, KEPT)).toHaveLength(2);
      await empty.close();
    });

    test('never goes into a store that holds something', async () => {
      const lines = await backupLines(full.db, KEPT);
      await expect(restoreLines(full.db, lines, NONE)).rejects.toThrow('not empty');
      expect(await backupLines(full.db, KEPT)).toEqual(lines);
    });
  });
});

describe('a backup that is encrypted', () => {
  const plain = new TextEncoder().encode('{"format":"feltfoot backup 2"}\n');

  test('opens with its passphrase or its identity, and with no other', async () => {
    const identity = await generateIdentity();
    const recipient = await identityToRecipient(identity);
    const own = { FELTFOOT_BACKUP_RECIPIENT: recipient, FELTFOOT_BACKUP_IDENTITY: identity };
    const sealed = await seal(plain, own);
    // The first line of every file of this format: C2SP age, "age-encryption.org/v1".
    expect(Buffer.from(sealed).toString('latin1')).toMatch(/^age-encryption\.org\/v1\n/);
    expect(await unseal(sealed, own)).toEqual(plain);
    const other = { FELTFOOT_BACKUP_IDENTITY: await generateIdentity() };
    await expect(unseal(sealed, other)).rejects.toThrow('The backup doesn’t open');
    const changed = sealed.with(-1, sealed[sealed.length - 1] ^ 1);
    await expect(unseal(changed, own)).rejects.toThrow();
    const phrase = { FELTFOOT_BACKUP_PASSPHRASE: 'reed by the jetty' };
    expect(await unseal(await seal(plain, phrase), phrase)).toEqual(plain);
  });

  test('is neither made nor opened without a key, and says which', async () => {
    await expect(seal(plain, {})).rejects.toThrow('FELTFOOT_BACKUP_RECIPIENT');
    await expect(unseal(plain, {})).rejects.toThrow('FELTFOOT_BACKUP_IDENTITY');
  });
});
