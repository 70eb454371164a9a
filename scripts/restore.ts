import { readFileSync } from 'node:fs';
import { linesIn, restoreLines } from '../src/lib/server/backup';
import { openStore, placeFrom } from '../src/lib/server/store';

const [file] = process.argv.slice(2);
if (!file) throw new Error('Say what from: npm run restore -- file.jsonl');
const lines = linesIn(readFileSync(file));
const store = await openStore({ ...placeFrom(process.env), isPatient: true, isNew: true });
try {
  console.log(`${await restoreLines(store.db, lines)} rows were put back.`);
} finally {
  await store.close();
}
