import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { linesIn, restoreLines } from '../src/lib/server/backup';
import { DELETIONS_FILE, readDeletions } from '../src/lib/server/deletions';
import { openStore, placeFrom } from '../src/lib/server/store';
import { isSealed, unseal } from './sealed';
import './told-plainly';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { deletions: { type: 'string', multiple: true, default: [] } }
});
const [file] = positionals;
if (!file) throw new Error('Say what from: npm run restore -- file.jsonl, or file.jsonl.age');
const bytes = readFileSync(file);
const lines = linesIn(isSealed(file) ? Buffer.from(await unseal(bytes, process.env)) : bytes);
const place = placeFrom(process.env);
const beside = join(place.folder, DELETIONS_FILE);
const files = [...values.deletions, ...(existsSync(beside) ? [beside] : [])];
if (files.length === 0) {
  console.warn(`No ${DELETIONS_FILE} is there: what was deleted since the backup comes back.`);
}
const deletions = files.flatMap(readDeletions);
const store = await openStore({ ...place, isPatient: true, isNew: true });
try {
  const now = new Date().toISOString();
  const { rows, deleted } = await restoreLines(store.db, lines, { deletions, now });
  console.log(`${rows} rows were put back; ${deleted} had been deleted since and were not.`);
} finally {
  await store.close();
}
