import { expect, test, type Page } from '@playwright/test';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { longMotions, longStyles } from './motions';
import { cutOff, faultsOf, faultsWideByNight, spillOf, visit } from './page';

/** Of a phone's 640 px the bar takes no more than a quarter, also with text at twice its size. */
const MOST_BAR_PX = 160;

/** Addresses of all pages that are written at build time, which are those that open offline. */
const addresses = readdirSync(join(process.env.FELTFOOT_BUILD ?? '', 'prerendered'), {
  recursive: true,
  encoding: 'utf8'
})
  .filter((file) => file.endsWith('.html'))
  .map((file) => `/${file.slice(0, -'.html'.length)}`.replace(/\/index$/, '/'))
  .sort();

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
}

/** Pages that a server makes, of each room of theirs, and none. */
const NOT_KEPT = ['/guide', '/guide/new', '/guide/abc', '/clinic/abc/lead', '/no-such-page'];

/** The bar of places. */
const placesOf = (page: Page) => page.getByRole('navigation', { name: 'Main' }).getByRole('link');

const isLesson = (address: string) => address.startsWith('/lessons/');
/** At first sight lessons differ in words only: for axe one stands for all, and `npm run test:long` looks at each. */
const isLookedAt = (address: string, i: number) =>
  !isLesson(address) || !isLesson(addresses[i - 1]);
/** By night the rooms and a lesson stand for their pages, which have their colours: `npm run test:long` looks at each. */
const ROOMS = ['/', '/about', '/lessons', '/practice', '/quiz', '/ruler', '/water'];
const BY_NIGHT = [...ROOMS, '/lessons/one-foot'];

test.use({ serviceWorkers: 'allow' });

/** WCAG 2.2, 1.4.4: text at twice its size. */
async function expectReadableAtTwice(page: Page, address: string): Promise<void> {
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  expect(await spillOf(page), `${address} at 200 %`).toBeLessThanOrEqual(0);
  expect(await cutOff(page), `${address} at 200 %`).toEqual([]);
  const bar = await page.locator('header').first().boundingBox();
  expect(bar?.height, `the bar of ${address} at 200 %`).toBeLessThan(MOST_BAR_PX);
}

// One walk for all of it: each page is opened once, as it is kept. What a server sends is the same file.
test(
  'every page is served, and opens without a connection after one visit; there nothing moves for longer than three frames where less is asked for, and it is accessible at first sight, on a narrow phone and with text at twice its size, and each room and a lesson by night on a wide window',
  { tag: '@narrow' },
  async ({ page, context, request }) => {
    test.setTimeout(20_000 * addresses.length);
    expect(addresses).toEqual(expect.arrayContaining(BY_NIGHT));
    // One after the other: between two pages a server gives up the connection, and asked just then it is no fault.
    for (const address of addresses) await expect(await request.get(address), address).toBeOK();
    await page.goto('/');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    // Else nothing would be proved: what is given to it moves, and is seen to.
    await open(page, '/safety');
    await page.addStyleTag({ content: 'h1 { transition: opacity 1s; opacity: 0.5; }' });
    expect(await longStyles(page)).toHaveLength(1);
    for (const [i, address] of addresses.entries()) {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await open(page, address);
      expect(await longMotions(page), address).toEqual([]);
      expect(await longStyles(page), address).toEqual([]);
      await page.emulateMedia({ reducedMotion: 'no-preference' });
      await expect(placesOf(page), address).toHaveCount(4);
      expect(await spillOf(page), address).toBeLessThanOrEqual(0);
      if (isLookedAt(address, i)) expect(await faultsOf(page), address).toEqual([]);
      if (BY_NIGHT.includes(address)) expect(await faultsWideByNight(page), address).toEqual([]);
      await expectReadableAtTwice(page, address);
    }
    // What is not kept says so, in the app's own look.
    for (const address of NOT_KEPT) {
      await open(page, address);
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('No connection');
      await expect(page.getByRole('link', { name: 'Lessons', exact: true })).toBeVisible();
    }
  }
);

test(
  'every page is accessible by night on a wide window at first sight, and every lesson on a narrow phone',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    test.setTimeout(20_000 * addresses.length);
    for (const address of addresses) {
      await visit(page, address);
      if (isLesson(address)) expect(await faultsOf(page), address).toEqual([]);
      expect(await faultsWideByNight(page), address).toEqual([]);
    }
  }
);
