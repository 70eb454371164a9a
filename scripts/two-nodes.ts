import { resolve } from 'node:path';
import { ensureBuilt } from './build.mjs';
import { startNode } from './load-nodes';
import './orphan.mjs';
import { ownPostgres } from './own-postgres';
import { startProxy } from './proxy';
import { root } from './run.mjs';
import { say } from './say.mjs';

/** Two nodes on one PostgreSQL behind a small proxy, to try out what docs/two-nodes.md says. */
const { PORT = '3000', HOST, FELTFOOT_BUILD } = process.env;

/** What runs by now, to be stopped last come first gone. */
const running: { stop(): Promise<void> }[] = [];
let isStopping = false;

async function stop(): Promise<void> {
  if (isStopping) return;
  isStopping = true;
  say('Stopping.');
  for (const one of running.reverse()) await one.stop();
  process.exit(0);
}
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop());

const build = resolve(root, FELTFOOT_BUILD || (await ensureBuilt()));
const store = await ownPostgres();
if (!store) process.exit(1);
running.push(store);

const env = { DATABASE_URL: store.url, FELTFOOT_PROXIES: '1' };
const nodes = await Promise.all([startNode(build, env), startNode(build, env)]);
running.push({ stop: async () => void (await Promise.all(nodes.map((node) => node.stop()))) });
const ports = nodes.map(({ base }) => Number(new URL(base).port));
const proxy = await startProxy(ports, Number(PORT), HOST);
// Nodes first: their feeds end, and the proxy has nothing left to hold.
running.splice(1, 0, proxy);

say(`Two nodes are behind http://localhost:${proxy.port}. Stop all with Ctrl+C.`);
for (const [i, { base, pid, gone }] of nodes.entries()) {
  say(`  node ${i + 1}   ${base}   process ${pid}`);
  void gone.then(() => isStopping || say(`Node ${i + 1} is gone.`));
}
