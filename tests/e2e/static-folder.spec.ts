import { expect, test, type Page } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { TOLD, turnByKey } from './hand';
import { ownFolder } from './own-folder';

/** Where the folder lies on somebody's web space. */
const BASE = '/a/guide/learn';
const folder = ownFolder('static');
const site = join(folder, 'site');

const KINDS: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json'
};

/** Pages of a server’s that are files, with what their links bring. */
const NEED_A_SERVER = [
  '/clinic#ABCDEF',
  '/clinic/home#ABCDEF.abcdefghijklmnopqrstuvwx',
  '/clinic/rod#ABCDEF.abcdefghijklmnopqrstuvwx',
  '/guide/open#abcdefghijklmnopqrstuvwxyz234567',
  '/guide/task#abcdefghijklmnopqrstuvwx'
];

/** What was asked for that is not there, or not in the folder. */
const wrong: string[] = [];

/** A web space that knows nothing: files, `index.html` of a folder, and `404.html` for the rest. */
const space = createServer((asked, answer) => {
  const { pathname } = new URL(asked.url ?? '', 'http://space');
  const isOurs = pathname === BASE || pathname.startsWith(`${BASE}/`);
  const path = join(site, isOurs ? decodeURIComponent(pathname.slice(BASE.length)) : 'nowhere');
  const file = existsSync(path) && statSync(path).isDirectory() ? join(path, 'index.html') : path;
  const isThere = isOurs && existsSync(file);
  if (!isThere) wrong.push(pathname);
  const shown = isThere ? file : join(site, '404.html');
  answer.writeHead(isThere ? 200 : 404, {
    'content-type': KINDS[extname(shown)] ?? 'application/octet-stream'
  });
  answer.end(readFileSync(shown));
});

test.beforeAll(async () => {
  const build = ['scripts/build-static.mjs', '--base', BASE, '--out', site];
  execFileSync(process.execPath, build, { stdio: 'pipe' });
  await new Promise<void>((up) => space.listen(0, '127.0.0.1', up));
});
test.afterAll(() => {
  space.closeAllConnections();
  space.close();
});

const addressOf = (path: string) =>
  `http://localhost:${(space.address() as AddressInfo).port}${BASE}${path}`;
const rod = (page: Page) => page.getByRole('slider', { name: /^Rod/ });

/** A guide sets a try of one foot. @returns the link */
async function setHomework(page: Page): Promise<string> {
  await page.goto(addressOf('/homework'));
  await page.locator('main[data-awake]').waitFor();
  await page.getByText('One foot', { exact: true }).click();
  await page.getByRole('checkbox', { name: /^Drag it one foot/ }).check();
  await page.getByLabel('Tries of each').fill('1');
  await page.getByRole('button', { name: 'Make the link' }).press('Enter');
  return page.getByLabel('Link to the homework').inputValue();
}

test(
  'a static folder under a path of a web space: a try, a lesson, a question and homework by link ask for nothing that is not in it',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    test.slow();
    const outside: string[] = [];
    page.on('request', (request) => {
      const url = request.url();
      if (url.startsWith('http') && !url.startsWith(addressOf('/'))) outside.push(url);
    });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto(addressOf('/'));
    await page.locator('main[data-awake]').waitFor();
    await turnByKey(rod(page), 8);
    await expect(page.locator(TOLD).first()).not.toBeEmpty();

    const places = page.getByRole('navigation', { name: 'Main' });
    await page.goto(addressOf('/about/'));
    await places.getByRole('link', { name: 'Lessons' }).click();
    await page
      .getByRole('main')
      .getByRole('link', { name: /One foot/ })
      .first()
      .click();
    await page.getByRole('button', { name: /^Begin: / }).click();
    await expect(page.locator('section#predict h2')).toBeFocused();
    // Opened by itself, as from a bookmark, and with no slash at its end.
    await page.reload();
    await page.goto(addressOf('/quiz?ask=near-or-far&seed=7'));
    await page.getByRole('group', { name: 'Your answer' }).getByRole('radio').first().check();
    await page.getByRole('button', { name: 'I knew it' }).press('Enter');
    await expect(page.locator('.told').first()).toBeVisible();

    const link = await setHomework(page);
    expect(link).toContain(`${BASE}/`);
    await page.goto('about:blank');
    await page.goto(link);
    await page.getByRole('button', { name: 'Drag it one foot' }).press('Enter');
    await page.getByRole('button', { name: 'Take the rod' }).click();
    await turnByKey(rod(page), 8);
    await expect(page.locator('.grade .number')).toBeVisible();
    expect({ outside, wrong }).toEqual({ outside: [], wrong: [] });

    // An address that is not there has the page’s own look, and what needs a server says so.
    await page.goto(addressOf('/guide'));
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Not in this copy');
    await expect(places.getByRole('link', { name: 'Lessons' })).toBeVisible();
    await page.getByRole('main').getByRole('link', { name: 'set one' }).click();
    await expect(page.getByRole('button', { name: 'Make the link' })).toBeVisible();
    for (const address of NEED_A_SERVER) {
      await page.goto('about:blank');
      await page.goto(addressOf(address));
      await expect(page.getByRole('main'), address).toContainText('this copy of Feltfoot has none');
    }
    expect(outside).toEqual([]);
  }
);
