import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root, runInstalled } from './run.mjs';

/** Has Kit write the types of routes and the tsconfig that ours extends. */
export async function sync() {
  const { code } = await runInstalled('@sveltejs/kit/svelte-kit.js', ['sync']);
  if (code !== 0) throw new Error('svelte-kit sync failed; what it found is printed above.');
}

/** In a fresh clone there is no such tsconfig yet, and whatever reads ours would fail. */
export async function ensureSynced() {
  if (!existsSync(join(root, '.svelte-kit', 'tsconfig.json'))) await sync();
}
