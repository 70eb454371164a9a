import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ensureBuilt } from './build.mjs';
import { loadClinic } from './load-clinic';
import { loadHomework } from './load-homework';
import { memoryOf, startNode } from './load-nodes';
import { ownPostgres } from './own-postgres';
import { root } from './run.mjs';

const { values } = parseArgs({
  options: {
    phones: { type: 'string', default: '500' },
    clients: { type: 'string', default: '300' },
    /** Seconds over which the clients arrive; 0: as fast as they are taken. */
    over: { type: 'string', default: '0' },
    nodes: { type: 'string', default: '1' },
    build: { type: 'string' },
    /** A folder for a CPU profile of each node. */
    profile: { type: 'string' },
    json: { type: 'boolean', default: false }
  }
});
/** Bounds: this is a test of this machine by itself, not a tool. */
const MOST = { phones: 2000, clients: 10_000, over: 7200, nodes: 4 };

function count(name: keyof typeof MOST, least = 1): number {
  const value = Number(values[name]);
  if (Number.isInteger(value) && value >= least && value <= MOST[name]) return value;
  throw new Error(`--${name}: from ${least} to ${MOST[name]}, got ${values[name]}`);
}

const wanted = {
  phones: count('phones'),
  clients: count('clients'),
  over_s: count('over', 0),
  nodes: count('nodes')
};

const build = values.build ?? join(root, await ensureBuilt());
const folder = mkdtempSync(join(tmpdir(), 'feltfoot-load-'));
// Several nodes share a PostgreSQL: the one that is named, or one that lives as long as this test.
const isShared = wanted.nodes > 1 || Boolean(process.env.DATABASE_URL);
const own = isShared ? await ownPostgres() : null;
if (isShared && !own) process.exit(1);
const url = own?.url ?? '';
// Phones come by the addresses of several halls, as a proxy would say.
const env = { FELTFOOT_DATA: folder, DATABASE_URL: url, FELTFOOT_PROXIES: '1' };
const nodes = await Promise.all(
  Array.from({ length: wanted.nodes }, () => startNode(build, env, values.profile))
);
try {
  const clinic = await loadClinic(nodes, wanted.phones);
  const homework = await loadHomework(nodes, wanted.clients, wanted.over_s);
  const memory_bytes = await memoryOf(nodes);
  const store = url ? 'postgres' : 'sqlite';
  const report = { store, nodes: wanted.nodes, clinic, homework, memory_bytes };
  if (values.json) console.log(JSON.stringify(report));
  else console.dir(report, { depth: 5 });
  const wrong = clinic.lost + clinic.doubled + homework.lost + homework.doubled + homework.failed;
  if (wrong > 0) process.exitCode = 1;
} finally {
  await Promise.all(nodes.map((node) => node.stop()));
  await own?.stop();
  rmSync(folder, { recursive: true, force: true });
}
