import { expect, test, type Page } from '@playwright/test';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { longMotions, longStyles } from './motions';
import { cutOff, faultsByNight, faultsOf, spillOf } from './page';

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
/** Lessons differ in words only: by night one stands for all. */
const isSeenByNight = (address: string, i: number) =>
  !isLesson(address) || !isLesson(addresses[i - 1]);

test(
  'on every page nothing moves for longer than three frames where less is asked for; it is accessible at first sight, and no wider than a phone, also with text at twice its size',
  { tag: '@narrow' },
  async ({ page }) => {
    test.setTimeout(10_000 * addresses.length);
    // Else nothing would be proved: what is given to it moves, and is seen to.
    await open(page, '/safety');
    await page.addStyleTag({ content: 'h1 { transition: opacity 1s; opacity: 0.5; }' });
    expect(await longStyles(page)).toHaveLength(1);
    for (const address of addresses) {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await open(page, address);
      expect(await longMotions(page), address).toEqual([]);
      expect(await longStyles(page), address).toEqual([]);
      await page.emulateMedia({ reducedMotion: 'no-preference' });
      expect(await faultsOf(page), address).toEqual([]);
      await expect(placesOf(page), address).toHaveCount(4);
      expect(await spillOf(page), address).toBeLessThanOrEqual(0);
      // WCAG 2.2, 1.4.4: text at twice its size.
      await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
      expect(await spillOf(page), `${address} at 200 %`).toBeLessThanOrEqual(0);
      expect(await cutOff(page), `${address} at 200 %`).toEqual([]);
      const bar = await page.locator('header').first().boundingBox();
      expect(bar?.height, `the bar of ${address} at 200 %`).toBeLessThan(MOST_BAR_PX);
    }
  }
);

test.describe('without a connection', () => {
  test.use({ serviceWorkers: 'allow' });

  test(
    'every page opens without a connection after one visit, and is accessible there on a wide window by night',
    { tag: '@any-width' },
    async ({ page, context }) => {
      test.setTimeout(10_000 * addresses.length);
      expect(addresses).toContain('/water');
      await page.goto('/');
      await page.evaluate(() => navigator.serviceWorker.ready);
      await context.setOffline(true);
      for (const [i, address] of addresses.entries()) {
        await open(page, address);
        if (isSeenByNight(address, i)) expect(await faultsByNight(page), address).toEqual([]);
      }
      // What is not kept says so, in the app's own look.
      for (const address of NOT_KEPT) {
        await open(page, address);
        await expect(page.getByRole('heading', { level: 1 })).toHaveText('No connection');
        await expect(page.getByRole('link', { name: 'Lessons', exact: true })).toBeVisible();
      }
    }
  );
});
