import { cpSync, existsSync, rmSync } from 'node:fs';
import { isAbsolute, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { ensureInstalled } from './install.mjs';
import { withLock } from './lock.mjs';
import './orphan.mjs';
import { root, runInstalled } from './run.mjs';
import { say, since } from './say.mjs';

const { values } = parseArgs({
  options: { base: { type: 'string', default: '' }, out: { type: 'string', default: 'build' } }
});
const base = values.base.replace(/\/$/, '');
if (base && !/^(\/[\w.~-]+)+$/.test(base)) {
  throw new Error(`--base is a path like /learn/feltfoot, got “${values.base}”`);
}
const out = isAbsolute(values.out) ? values.out : resolve(root, values.out);
// What is there is deleted before: only what a build of this kind made may be.
if (existsSync(out) && !existsSync(join(out, '_app', 'version.json'))) {
  throw new Error(`--out: ${values.out} is there and holds something else.`);
}

/** Apart from the builds that are served: its pages stand in folders, and know no server. */
const folder = join('.feltfoot', 'static');

await ensureInstalled();
await withLock('build', async () => {
  const from = Date.now();
  say('Building the static folder…');
  const { code, output } = await runInstalled('vite/bin/vite.js', ['build'], {
    env: { FELTFOOT_STATIC: folder, FELTFOOT_BASE: base, NODE_ENV: 'production' },
    quiet: true
  });
  if (code !== 0) throw new Error(`The build failed:\n${output}`);
  rmSync(out, { recursive: true, force: true });
  cpSync(join(root, folder), out, { recursive: true });
  say(`The static folder is ${values.out}, for ${base || '/'}. Built in ${since(from)}.`);
});
