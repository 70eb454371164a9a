import { loadHandler, serve } from '../server/serve.mjs';

// One node for the load test: on loopback only, on any free port, which it tells its parent.
const handler = await loadHandler(process.argv[2]);
const served = await serve({ handler, port: 0, host: '127.0.0.1' });
process.send?.({ port: served.port });

process.on('message', (asked) => {
  if (asked === 'memory') process.send?.({ memory_bytes: process.memoryUsage().rss });
});
process.on('disconnect', async () => {
  process.emit('sveltekit:shutdown', 'load test');
  await served.stop();
  process.exit(0);
});
