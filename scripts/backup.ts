import { writeFileSync } from 'node:fs';
import { backupLines } from '../src/lib/server/backup';
import { openStore, placeFrom } from '../src/lib/server/store';

// Beside a running server or without one: the rows are of one moment.
const [file] = process.argv.slice(2);
if (!file) throw new Error('Say where to: npm run backup -- file.jsonl');
const store = await openStore(placeFrom(process.env));
const lines = await backupLines(store.db);
await store.close();
// For the owner alone: names of clients are in it. Never over another backup.
writeFileSync(file, `${lines.join('\n')}\n`, { mode: 0o600, flag: 'wx' });
console.log(`${lines.length - 2} rows are in ${file}.`);
