import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createSpace } from '../../src/lib/server/spaces';
import { forgetClient } from '../../src/lib/server/clients';
import { openStore } from '../../src/lib/server/store';

// A child of deleted.test.ts, on a disk of its own that it fills up.
const [disk] = process.argv.slice(2);
const NOW = '2031-05-01T08:00:00.000Z';
const NAME = 'Ina of the seventh jetty';
const store = await openStore({ folder: disk });
const { db } = store;
store.keepReserve();
const client = { id: 'c', assignment_id: 'a', token_hash: 't', nickname: NAME, joined_at: NOW };
await db
  .insertInto('clients')
  .values({ ...client, note: '' })
  .execute();
const row = {
  scope: 'c',
  parent: 'a',
  part: 'p',
  payload_hash: 'h',
  reply: '{}',
  received_at: NOW
};
for (let i = 0; i < 50; i++) {
  const payload = NAME.repeat(200);
  await db
    .insertInto('submissions')
    .values({ ...row, id: String(i), payload })
    .execute();
}
await store.checkpoint();
// Nothing is left for anybody, to the last byte.
for (let bytes = 1024 * 1024; bytes >= 1; bytes = Math.floor(bytes / 2)) {
  for (let i = 0; ; i++) {
    try {
      writeFileSync(join(disk, `full-${bytes}-${i}`), Buffer.alloc(bytes));
    } catch {
      break;
    }
    if (bytes === 1 && i > 20) break;
  }
}
const refused = await createSpace(db, 'Reed', NOW).catch((fault: { code: string }) => fault.code);
console.log(`refused: ${refused}`);
await store.deleting(() => forgetClient(db, 'a', 'c'));
const count = async (table: 'clients' | 'submissions') =>
  (await db.selectFrom(table).selectAll().execute()).length;
console.log(
  `deleted: ${await count('clients')} clients, ${await count('submissions')} submissions`
);
const held = readdirSync(disk).filter((name) => readFileSync(join(disk, name)).includes(NAME));
console.log(`left: ${held.join()}`);
