import { writeFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { backupLines } from '../src/lib/server/backup';
import { REMEMBERED_DAYS } from '../src/lib/server/deletions';
import { daysAfter } from '../src/lib/server/retention';
import { openStore } from '../src/lib/server/store';
import { isSealed, seal } from './sealed';
import { storeThere } from './store-there';
import './told-plainly';

// Beside a running server or without one: the rows are of one moment.
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { days: { type: 'string', default: '90' } }
});
const [file] = positionals;
if (!file) throw new Error('Say where to: npm run backup -- file.jsonl, or file.jsonl.age');
const days = Number(values.days);
if (!Number.isInteger(days) || days < 1 || days > REMEMBERED_DAYS) {
  throw new Error(`--days: from 1 to ${REMEMBERED_DAYS}, got ${values.days}`);
}
const made = new Date().toISOString();
const until = daysAfter(made, days);
const store = await openStore({ ...storeThere(process.env), isPatient: true });
const lines = await backupLines(store.db, { made, until });
await store.close();
// For the owner alone: names of clients are in it. Never over another backup.
const how = { mode: 0o600, flag: 'wx' };
if (isSealed(file)) {
  const plain = Buffer.concat([...ended(lines)].map((line) => Buffer.from(line)));
  await writeFile(file, await seal(plain, process.env), how);
} else await writeFile(file, ended(lines), how);
console.log(`${lines.length - 2} rows are in ${file}, good until ${until.slice(0, 10)}.`);

/** One by one: a text has at most half a gigabyte. */
function* ended(all: readonly string[]): Generator<string> {
  for (const line of all) yield `${line}\n`;
}
