import { expect, test } from '@playwright/test';
import { request } from 'node:http';
import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { keptCertificate } from '../../server/certificate.mjs';
import { startServer, type Running } from '../server/running';
import { openClinic } from './in-clinic';
import { ownFolder } from './own-folder';

const folder = ownFolder('proxy');
let app: Running;

/** The least of a proxy that holds the certificate: it passes on, and adds whom it was asked by. */
const proxy = createServer(
  keptCertificate(join(folder, 'tls'), ['localhost'], new Date()),
  (asked, answer) => {
    const { method, url: path, headers, socket } = asked;
    const onward = request(new URL(app.base), {
      ...{ method, path, agent: false },
      headers: { ...headers, 'x-forwarded-for': socket.remoteAddress, 'x-forwarded-proto': 'https' }
    });
    onward.on('response', (given) => {
      answer.writeHead(given.statusCode ?? 502, given.headers).flushHeaders();
      given.pipe(answer);
    });
    onward.on('error', () => answer.destroy());
    answer.on('close', () => onward.destroy());
    asked.pipe(onward);
  }
);

test.beforeAll(async () => {
  const data = { FELTFOOT_DATA: join(folder, 'data') };
  app = await startServer({ ...data, FELTFOOT_PROTOCOL: 'https', FELTFOOT_PROXIES: '1' });
  await new Promise<void>((up) => proxy.listen(0, '127.0.0.1', up));
});
test.afterAll(async () => {
  proxy.closeAllConnections();
  proxy.close();
  await app.stop('SIGTERM');
});

test(
  'behind a proxy with https a browser is bound to it, and a clinic hears its phones',
  { tag: '@any-width' },
  async ({ browser }) => {
    const baseURL = `https://localhost:${(proxy.address() as AddressInfo).port}`;
    const context = await browser.newContext({ baseURL, ignoreHTTPSErrors: true });
    const page = await context.newPage();
    const first = await page.goto('/');
    expect(first?.headers()['strict-transport-security']).toMatch(/max-age=\d{7,}/);

    const code = await openClinic(page);
    const cookies = (await context.cookies()).filter(({ name }) => name.startsWith('__Host-'));
    expect(cookies.length).toBeGreaterThan(0);
    for (const one of await context.cookies()) {
      expect(one).toMatchObject({ secure: true, path: '/', domain: 'localhost' });
      expect(one.name).toMatch(/^__Host-/);
    }

    // The guide's page hears of the phone by its feed alone.
    const phone = await browser.newContext({ baseURL, ignoreHTTPSErrors: true });
    const joined = await phone.newPage();
    await joined.goto(`/clinic#${code}`);
    await expect(page.getByText('1 here', { exact: true })).toBeVisible();
    await page.getByRole('button', { name: /^(Next|Skip this) round$/ }).click();
    await expect(joined.getByText(/^\d+ of \d+$/)).toBeVisible();
    await phone.close();
    await context.close();
  }
);
