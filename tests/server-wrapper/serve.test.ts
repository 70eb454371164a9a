import { request, type IncomingHttpHeaders, type RequestListener } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { securityHeaders } from '../../server/headers.mjs';
import { allowedHosts, hostName, lanAddresses } from '../../server/hosts.mjs';
import { serve } from '../../server/serve.mjs';

type Served = Awaited<ReturnType<typeof serve>>;
let served: Served | undefined;
afterEach(async () => {
  await served?.stop();
  served = undefined;
});

const sayHello: RequestListener = (_request, response) => void response.end('hello');

function start(handler: RequestListener, options = {}) {
  return serve({ handler, port: 0, host: '127.0.0.1', ...options }).then((it) => (served = it));
}

type Answer = { status?: number; headers: IncomingHttpHeaders; body: string };

/** fetch() lets nobody choose the Host header, which is what is under test. */
function ask(port: number, headers: Record<string, string> = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, headers }, (answer) => {
      let body = '';
      answer.on('data', (chunk) => (body += chunk));
      answer.on('end', () => resolve({ status: answer.statusCode, headers: answer.headers, body }));
      answer.on('error', reject);
    });
    asked.on('error', reject);
    asked.end();
  });
}

describe('every answer carries the security headers', () => {
  const names = Object.entries(securityHeaders).map(([name, value]) => ({ name, value }));
  test.each(names)('$name', async ({ name, value }) => {
    const { port } = await start(sayHello);
    const good = await ask(port);
    const refused = await ask(port, { Host: 'elsewhere.example' });
    expect(good.headers[name.toLowerCase()]).toBe(value);
    expect(refused.headers[name.toLowerCase()]).toBe(value);
  });

  test('and motion sensors stay allowed for our own pages', () => {
    expect(securityHeaders['Permissions-Policy']).toContain('accelerometer=(self)');
    expect(securityHeaders['Permissions-Policy']).toContain('gyroscope=(self)');
  });
});

describe('the list of hosts', () => {
  test.each(['localhost', 'localhost:3000', '127.0.0.1:80', '[::1]:3000', 'LOCALHOST'])(
    'answers to %s',
    async (host) => {
      const { port } = await start(sayHello);
      expect(await ask(port, { Host: host })).toMatchObject({ status: 200, body: 'hello' });
    }
  );

  test.each(['elsewhere.example', 'localhost.elsewhere.example', 'localhost:3000@x', 'a b'])(
    'refuses “%s” and never asks the app',
    async (host) => {
      let asked = false;
      const { port } = await start((_request, response) => {
        asked = true;
        response.end();
      });
      expect(await ask(port, { Host: host })).toMatchObject({ status: 421 });
      expect(asked).toBe(false);
    }
  );

  test('takes further names from its option', async () => {
    const { port } = await start(sayHello, { hosts: 'lake.example, Club.Example' });
    expect(await ask(port, { Host: 'club.example:8080' })).toMatchObject({ status: 200 });
    expect(await ask(port, { Host: 'river.example' })).toMatchObject({ status: 421 });
  });

  test('holds every LAN address that is printed', () => {
    for (const address of lanAddresses()) expect(allowedHosts()).toContain(address);
  });

  test.each([
    ['Lake.example:81', 'lake.example'],
    ['[FE80::1]:81', '[fe80::1]'],
    ['lake.example:', undefined],
    ['a/b', undefined],
    [undefined, undefined]
  ])('reads %s as %s', (header, name) => expect(hostName(header)).toBe(name));
});

test('the app is told protocol and host by us, whatever the request claims', async () => {
  const { port } = await start((asked, answer) => {
    const { 'x-feltfoot-protocol': protocol, 'x-feltfoot-host': host } = asked.headers;
    answer.end(`${protocol}://${host}`);
  });
  const lies = { 'X-Feltfoot-Protocol': 'https', 'X-Feltfoot-Host': 'elsewhere.example' };
  expect((await ask(port, { Host: 'localhost:99', ...lies })).body).toBe('http://localhost:99');
});

test.each([[undefined, lanAddresses().join(',')] as const, ['127.0.0.1', ''] as const])(
  'listening on %s, the app is told by us where phones find it: “%s”',
  async (host, addresses) => {
    const { port } = await start(
      (asked, answer) => void answer.end(String(asked.headers['x-feltfoot-lan'])),
      { host }
    );
    expect((await ask(port, { 'X-Feltfoot-Lan': '192.0.2.1' })).body).toBe(addresses);
  }
);

describe('the address that limits go by', () => {
  const tell: RequestListener = (asked, answer) =>
    void answer.end(String(asked.headers['x-feltfoot-address']));
  const claims = {
    'X-Forwarded-For': '203.0.113.9, 198.51.100.7',
    'X-Feltfoot-Address': '192.0.2.1'
  };

  test.each([
    { proxies: 0, headers: claims, address: '127.0.0.1' },
    { proxies: 1, headers: claims, address: '198.51.100.7' },
    { proxies: 2, headers: claims, address: '203.0.113.9' },
    { proxies: 1, headers: {}, address: '127.0.0.1' }
  ])('with $proxies proxies in front is $address', async ({ proxies, headers, address }) => {
    const { port } = await start(tell, { proxies });
    expect((await ask(port, headers)).body).toBe(address);
  });

  test('refuses a number of proxies that is none', async () => {
    await expect(start(tell, { proxies: NaN })).rejects.toThrow('FELTFOOT_PROXIES');
  });
});

describe('stopping', () => {
  test('lets an answer under way end', async () => {
    const { port, stop } = await start((_asked, answer) => {
      setTimeout(() => answer.end('late'), 100);
    });
    const asked = ask(port);
    await new Promise((resolve) => setTimeout(resolve, 30));
    await stop();
    served = undefined;
    expect((await asked).body).toBe('late');
  });

  test('cuts an answer that never ends, in less than a second', async () => {
    const { port, stop } = await start((_asked, answer) => void answer.write('…'));
    const asked = ask(port).catch((error: Error) => error);
    await new Promise((resolve) => setTimeout(resolve, 30));
    const from = performance.now();
    await stop();
    served = undefined;
    expect(performance.now() - from).toBeLessThan(1000);
    expect(await asked).toBeInstanceOf(Error);
  });
});
