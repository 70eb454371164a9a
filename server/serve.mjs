import { createServer } from 'node:http';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createServer as createSecureServer } from 'node:https';
import { boundByAddress, faultOf } from './admit.mjs';
import { headersUnder } from './headers.mjs';
import { allowedHosts, hostName, lanAddresses } from './hosts.mjs';
import { markServed } from './served.mjs';

/** @typedef {import('node:http').RequestListener} RequestListener */

/** How long an answer under way may take once we are told to stop; the whole stop takes < 1 s. */
const graceMs = 500;
const sweepMs = 20;
/** To ask the system for its addresses takes as long as a vote; they change this seldom. */
const lanKeptMs = 5000;
/** A request that is not all there after this is no phone's, ms: an open line costs a place. */
const headersWaitMs = 10_000;
const requestWaitMs = 30_000;
/** Looked after this often, ms. */
const waitCheckMs = 1000;
/**
 * Connections in all, and of one address: a hall of two thousand phones behind one, each with a feed and
 * two more. Behind a proxy all come from its address, and bounds by address are the proxy's to set.
 */
const mostConnections = 20_000;
const mostConnectionsEach = 8000;
/** Two minutes of rod and reel at every digit are 0.7 MB; nothing that anyone sends is larger. */
const bodyLimit = '1M';

/** Only we write these, so Kit can trust them. */
const protocolHeader = 'x-feltfoot-protocol';
const hostHeader = 'x-feltfoot-host';
const addressHeader = 'x-feltfoot-address';
const lanHeader = 'x-feltfoot-lan';

/**
 * Loads a built app's request handler.
 * @param {string} folder absolute path of the build
 * @returns {Promise<RequestListener>}
 */
export async function loadHandler(folder) {
  // The adapter reads these once, while it loads. ORIGIN would pin a single address, and LAN
  // devices come in by another one than the machine itself.
  delete process.env.ORIGIN;
  process.env.PROTOCOL_HEADER = protocolHeader;
  process.env.HOST_HEADER = hostHeader;
  process.env.ADDRESS_HEADER = addressHeader;
  process.env.BODY_SIZE_LIMIT ??= bodyLimit;
  markServed(folder);
  process.env.FELTFOOT_COMPUTE = join(folder, 'compute-thread.js');
  const { handler } = await import(pathToFileURL(join(folder, 'handler.js')).href);
  return handler;
}

/**
 * Serves a request handler under security headers and a list of allowed hosts.
 * @param {object} options
 * @param {RequestListener} options.handler
 * @param {number} options.port 0 takes any free one
 * @param {string} [options.host] address to listen on; none means all
 * @param {string} [options.protocol] 'https' when a proxy in front speaks it
 * @param {string} [options.hosts] further allowed host names, comma-separated
 * @param {number} [options.proxies] how many proxies of ours stand in front, each of which adds the
 *   address it was asked from to X-Forwarded-For; further entries there are anybody's claims
 * @param {{ key: string | Buffer, cert: string | Buffer }} [options.tls] speaks https itself
 * @param {boolean} [options.isOwnMade] nobody vouches for that certificate
 * @param {number} [options.headersMs] how long the headers of a request may take
 * @param {number} [options.requestMs] and all of it
 * @param {number} [options.connections] at a time
 * @param {number} [options.connectionsEach] of one address
 */
export async function serve({
  handler,
  port,
  host,
  tls,
  isOwnMade = false,
  protocol = tls ? 'https' : 'http',
  hosts = '',
  proxies = 0,
  headersMs = headersWaitMs,
  requestMs = requestWaitMs,
  connections = mostConnections,
  connectionsEach = mostConnectionsEach
}) {
  if (!Number.isInteger(proxies) || proxies < 0) throw new Error(`FELTFOOT_PROXIES: ${proxies}`);
  const allowed = allowedHosts(hosts);
  const lan = keptFor(lanKeptMs, () => reachable(host).join(','));
  // A browser that has promised to come by https alone lets nobody past a certificate of our own making.
  const headers = Object.entries(headersUnder(isOwnMade ? 'http' : protocol));
  /** @type {RequestListener} */
  const answer = (request, response) => {
    for (const [name, value] of headers) response.setHeader(name, value);
    const fault = faultOf(request);
    if (fault) return refuse(response, fault);
    if (!allowed.has(hostName(request.headers.host) ?? '')) return refuse(response, wrongName);
    request.headers[protocolHeader] = protocol;
    request.headers[hostHeader] = request.headers.host;
    request.headers[addressHeader] = addressOf(request, proxies);
    request.headers[lanHeader] = lan();
    handler(request, response);
  };
  const waits = {
    headersTimeout: headersMs,
    requestTimeout: requestMs,
    connectionsCheckingInterval: Math.min(waitCheckMs, headersMs)
  };
  const server = tls
    ? createSecureServer({ ...waits, ...tls }, answer)
    : createServer(waits, answer);
  server.maxConnections = connections;
  if (proxies === 0) boundByAddress(server, connectionsEach);
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port, host }, () => resolve(undefined));
  });
  const address = /** @type {import('node:net').AddressInfo} */ (server.address());
  return { port: address.port, lan: reachable(host), stop: () => stopServer(server) };
}

const wrongName = {
  status: 421,
  says: 'This name is not one of ours. FELTFOOT_HOSTS lists further names to answer to.'
};

/**
 * @param {import('node:http').ServerResponse} response
 * @param {NonNullable<ReturnType<typeof faultOf>>} fault
 */
function refuse(response, { status, says, allow }) {
  if (allow) response.setHeader('Allow', allow);
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${says}\n`);
}

/** @param {import('node:http').IncomingMessage} request @param {number} proxies */
function addressOf({ headers, socket }, proxies) {
  const way = [headers['x-forwarded-for'] ?? []].flat().join(',').split(',');
  return (proxies > 0 && way.at(-proxies)?.trim()) || socket.remoteAddress || '';
}

/**
 * @template T
 * @param {number} ms
 * @param {() => T} ask
 * @returns {() => T} what it last said, asked again once that is older than `ms`
 */
function keptFor(ms, ask) {
  let said = ask();
  let asked_ms = performance.now();
  return () => {
    if (performance.now() - asked_ms > ms) {
      said = ask();
      asked_ms = performance.now();
    }
    return said;
  };
}

/** @param {string | undefined} host @returns {string[]} LAN addresses on which we do listen */
function reachable(host) {
  const everywhere = !host || host === '0.0.0.0' || host === '::';
  return lanAddresses().filter((address) => everywhere || address === host);
}

/**
 * Takes no new requests, lets running answers end, then cuts what is left (a live feed never ends
 * by itself).
 * @param {import('node:http').Server} server
 * @returns {Promise<void>}
 */
export function stopServer(server) {
  return new Promise((resolve) => {
    const cut = setTimeout(() => server.closeAllConnections(), graceMs);
    // A connection kept alive counts as open until it is swept away once its answer has ended.
    const sweep = setInterval(() => server.closeIdleConnections(), sweepMs);
    server.close(() => {
      clearTimeout(cut);
      clearInterval(sweep);
      resolve();
    });
    server.closeIdleConnections();
  });
}
