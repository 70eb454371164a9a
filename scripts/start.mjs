import { join } from 'node:path';
import { stopAll } from '../server/stop.mjs';
import { ensureBuilt } from './build.mjs';
import './orphan.mjs';
import { root } from './run.mjs';
import { say } from './say.mjs';
import { startOptions } from './start-options.mjs';

// Which port is tried first when none is asked for, and how many after it if it is taken.
const firstPort = 3000;
const portsTried = 20;

/**
 * @param {number | null} asked
 * @param {(port: number) => ReturnType<typeof import('../server/serve.mjs').serve>} listen
 */
async function onFirstFreePort(asked, listen) {
  if (asked !== null) return listen(asked);
  for (let port = firstPort; ; port++) {
    try {
      return await listen(port);
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || port >= firstPort + portsTried) throw error;
      say(`Port ${port} is taken; trying the next one.`);
    }
  }
}

/** @param {{ stop: () => Promise<void> }} served */
function stopOnSignal(served) {
  let stopping = false;
  for (const signal of ['SIGINT', 'SIGTERM']) {
    process.on(signal, async () => {
      if (stopping) return;
      stopping = true;
      say('Stopping.');
      await stopAll(served, signal);
      process.exit(0);
    });
  }
}

/**
 * With --https a certificate of this machine's own, or its owner's by file.
 * @param {boolean} isWanted
 */
async function secured(isWanted) {
  const { tlsFrom } = await import('../server/tls.mjs');
  const { FELTFOOT_TLS_CERT: certFile, FELTFOOT_TLS_KEY: keyFile } = process.env;
  return tlsFrom({ isWanted, certFile, keyFile, folder: join(root, '.feltfoot', 'tls') });
}

async function start() {
  const { isHttps, port: asked } = startOptions(process.argv.slice(2), process.env);
  const folder = await ensureBuilt();
  const { loadHandler, serve } = await import('../server/serve.mjs');
  const { tls, isOwnMade, says } = await secured(isHttps);
  const handler = await loadHandler(join(root, folder));
  const { HOST: host, FELTFOOT_HOSTS: hosts, FELTFOOT_PROTOCOL: protocol } = process.env;
  // Behind a proxy all come from its address, and one guesser would slow everybody.
  const proxies = Number(process.env.FELTFOOT_PROXIES || 0);
  const served = await onFirstFreePort(asked, (port) =>
    serve({ handler, port, host, hosts, protocol, proxies, tls, isOwnMade })
  );
  stopOnSignal(served);
  say('Feltfoot is running. Stop it with Ctrl+C.');
  const scheme = tls ? 'https' : 'http';
  say(`  on this machine   ${scheme}://localhost:${served.port}`);
  for (const address of served.lan) {
    say(`  on your network   ${scheme}://${address}:${served.port}`);
  }
  for (const line of says) say(line);
}

// A stop during the install or the build ends the child (run.mjs) and lands here as its failure.
await start().catch((error) => {
  console.error(error.code === 'EADDRINUSE' ? `Port ${error.port} is taken.` : error.message);
  process.exit(1);
});
