/** What our pages are asked by; everything else that is sent goes to an endpoint. */
const pageMethods = ['GET', 'HEAD'];
const endpointMethods = [...pageMethods, 'POST', 'PATCH', 'DELETE'];

/**
 * What is wrong with a request before anybody reads on.
 * @param {import('node:http').IncomingMessage} request
 * @returns {{ status: number, says: string, allow?: string } | null}
 */
export function faultOf({ method = '', url = '', rawHeaders }) {
  const hosts = rawHeaders.filter((name, i) => i % 2 === 0 && name.toLowerCase() === 'host');
  // Node reads the first; a proxy in front may have gone by the last.
  if (hosts.length > 1) return { status: 400, says: 'A request has one Host.' };
  const allowed = url.startsWith('/api/') ? endpointMethods : pageMethods;
  if (allowed.includes(method)) return null;
  return { status: 405, says: 'Nothing here is asked that way.', allow: allowed.join(', ') };
}

/**
 * Lets one address hold so many connections and no more.
 * @param {import('node:net').Server} server
 * @param {number} most
 */
export function boundByAddress(server, most) {
  /** @type {Map<string, number>} */
  const held = new Map();
  server.on('connection', (socket) => {
    const address = socket.remoteAddress ?? '';
    const now = (held.get(address) ?? 0) + 1;
    if (now > most) return void socket.destroy();
    held.set(address, now);
    socket.once('close', () => {
      const left = (held.get(address) ?? 1) - 1;
      if (left > 0) held.set(address, left);
      else held.delete(address);
    });
  });
}
