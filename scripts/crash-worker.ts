import { createInterface } from 'node:readline';
import { openStore } from '../src/lib/server/store';
import { accept } from '../src/lib/server/submissions';

/**
 * Takes submissions as the server does until it is killed. It is told the first id, and says each id
 * only after accept() has answered: what was said must never be lost.
 */
const [folder, firstId] = process.argv.slice(2);
const store = await openStore({ folder });
console.log('open');

// Nothing is written before the other side says so: a kill always falls into the writing.
await new Promise((resolve) => createInterface({ input: process.stdin }).once('line', resolve));
const payload = { kind: 'try', filler: 'x'.repeat(2000) };
for (let id = Number(firstId); ; id++) {
  const sent = { scope: `phone ${id % 7}`, id: String(id), parent: 'home', part: 'p', payload };
  const receipt = await accept(store.db, sent, new Date().toISOString(), () => ({ id }));
  console.log(`${receipt.kind} ${id}`);
}
