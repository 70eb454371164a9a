import { writeFile } from 'node:fs/promises';
import { backupLines } from '../src/lib/server/backup';
import { openStore, placeFrom } from '../src/lib/server/store';

// Beside a running server or without one: the rows are of one moment.
const [file] = process.argv.slice(2);
if (!file) throw new Error('Say where to: npm run backup -- file.jsonl');
const store = await openStore({ ...placeFrom(process.env), isPatient: true });
const lines = await backupLines(store.db);
await store.close();
// For the owner alone: names of clients are in it. Never over another backup.
await writeFile(file, ended(lines), { mode: 0o600, flag: 'wx' });
console.log(`${lines.length - 2} rows are in ${file}.`);

/** One by one: a text has at most half a gigabyte. */
function* ended(all: readonly string[]): Generator<string> {
  for (const line of all) yield `${line}\n`;
}
