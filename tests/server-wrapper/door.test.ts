import { connect, type Socket } from 'node:net';
import type { RequestListener } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { serve } from '../../server/serve.mjs';

type Served = Awaited<ReturnType<typeof serve>>;
let served: Served | undefined;
const sockets: Socket[] = [];
afterEach(async () => {
  for (const one of sockets.splice(0)) one.destroy();
  await served?.stop();
  served = undefined;
});

const sayHello: RequestListener = (_request, response) => void response.end('hello');

async function start(options = {}) {
  served = await serve({ handler: sayHello, port: 0, host: '127.0.0.1', ...options });
  return served.port;
}

/** Sends bytes as they are. @returns all that comes back until the other side ends it */
function send(port: number, text: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(text));
    sockets.push(socket);
    let heard = '';
    socket.on('data', (bytes) => (heard += bytes));
    socket.on('close', () => resolve(heard));
    socket.on('error', reject);
  });
}

const asking = (line: string, ...headers: string[]) =>
  [`${line} HTTP/1.1`, 'Host: localhost', 'Connection: close', ...headers, '', ''].join('\r\n');

const statusOf = (answer: string) => Number(/^HTTP\/1.1 (\d+)/.exec(answer)?.[1]);

describe('a request that no browser sends', () => {
  test('with two names is refused: a proxy may have believed the other one', async () => {
    const port = await start();
    const answer = await send(port, asking('GET /', 'Host: elsewhere.example'));
    expect(statusOf(answer)).toBe(400);
  });

  test.each(['TRACE /', 'PUT /', 'POST /', 'DELETE /lessons', 'PATCH /', 'PUT /api/guide/space'])(
    '%s is refused with what is allowed, and the app is not asked',
    async (line) => {
      const answer = await send(await start(), asking(line, 'Content-Length: 0'));
      expect(statusOf(answer)).toBe(405);
      expect(answer).toMatch(/^Allow: GET, HEAD/m);
      expect(answer).not.toContain('hello');
    }
  );

  test.each(['GET /', 'HEAD /lessons', 'POST /api/x', 'PATCH /api/x', 'DELETE /api/x'])(
    '%s is asked of the app',
    async (line) => {
      expect(statusOf(await send(await start(), asking(line, 'Content-Length: 0')))).toBe(200);
    }
  );
});

describe('who comes and says nothing', () => {
  const soon = { headersMs: 50, requestMs: 100 };

  test('or stops in the middle of the headers, is sent away', async () => {
    const port = await start(soon);
    expect(statusOf(await send(port, 'GET / HTTP/1.1\r\nHost: local'))).toBe(408);
  });

  test('or in the middle of the body', async () => {
    const port = await start({
      ...soon,
      handler: (asked: Parameters<RequestListener>[0]) => void asked.resume()
    });
    const answer = await send(port, asking('POST /api/x', 'Content-Length: 99') + 'half');
    expect(statusOf(answer)).toBe(408);
  });

  test('takes no more than one address may have of the connections', async () => {
    const port = await start({ connectionsEach: 3 });
    const idle = Array.from({ length: 3 }, () => connect(port, '127.0.0.1'));
    sockets.push(...idle);
    await Promise.all(idle.map((one) => new Promise((up) => one.on('connect', up))));
    expect(await send(port, asking('GET /')).catch(() => '')).toBe('');
    idle[0].destroy();
    await expect
      .poll(async () => statusOf(await send(port, asking('GET /')).catch(() => '')))
      .toBe(200);
  });

  test('or of all there are, where a proxy stands in front', async () => {
    const port = await start({ connectionsEach: 1, connections: 2, proxies: 1 });
    sockets.push(connect(port, '127.0.0.1'));
    expect(statusOf(await send(port, asking('GET /')))).toBe(200);
    sockets.push(connect(port, '127.0.0.1'));
    await expect.poll(async () => await send(port, asking('GET /')).catch(() => '')).toBe('');
  });
});

describe('under https', () => {
  test('a browser is told to come by no other way again', async () => {
    const plain = await send(await start(), asking('GET /'));
    expect(plain).not.toMatch(/strict-transport-security/i);
    await served?.stop();
    const answer = await send(await start({ protocol: 'https' }), asking('GET /'));
    expect(answer).toMatch(/^Strict-Transport-Security: max-age=31536000$/m);
  });
});
