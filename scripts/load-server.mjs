import { loadHandler, serve } from '../server/serve.mjs';
import { stopAll } from '../server/stop.mjs';

// One node of several: on loopback only, on any free port, which it tells its parent.
const handler = await loadHandler(process.argv[2]);
const { FELTFOOT_HOSTS: hosts, FELTFOOT_PROTOCOL: protocol, FELTFOOT_PROXIES } = process.env;
const proxies = Number(FELTFOOT_PROXIES || 0);
const served = await serve({ handler, port: 0, host: '127.0.0.1', hosts, protocol, proxies });
process.send?.({ port: served.port });

process.on('message', (asked) => {
  if (asked !== 'spent') return;
  const { user, system } = process.cpuUsage();
  process.send?.({ memory_bytes: process.memoryUsage().rss, cpu_ms: (user + system) / 1000 });
});
// Ctrl+C in a terminal goes to us too; the parent decides when we stop.
process.on('SIGINT', () => {});
process.on('disconnect', async () => {
  await stopAll(served, 'parent');
  process.exit(0);
});
