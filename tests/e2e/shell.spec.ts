import { expect, test } from '@playwright/test';
import { visit } from './page';

test(
  'the first page answers with security headers and without errors',
  { tag: '@any-width' },
  async ({ page }) => {
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    page.on('console', (line) => line.type() === 'error' && errors.push(line.text()));
    const answer = await page.goto('/');
    expect(answer?.headers()).toMatchObject({
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY'
    });
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(errors).toEqual([]);
  }
);

test(
  'a chosen night is there again at the next visit, from the first paint on',
  {
    tag: '@any-width'
  },
  async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'light' });
    await visit(page, '/');
    const ground = () =>
      page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const byDay = await ground();
    await page.getByRole('radio', { name: 'Night' }).check();
    await expect.poll(ground).not.toBe(byDay);
    const byNight = await ground();
    await page.reload({ waitUntil: 'commit' });
    await page.waitForSelector('main', { state: 'attached' });
    expect(await ground()).toBe(byNight);
  }
);

test(
  'a page that is open while the app is updated loads what comes next afresh',
  { tag: '@any-width' },
  async ({ page }) => {
    await visit(page, '/ruler/practise');
    const opened = () => page.evaluate(() => performance.timeOrigin);
    /** From now on the server has another version, and none of the files that this page knows. */
    async function update() {
      let isAfresh = false;
      await page.unrouteAll();
      await page.route('**/_app/version.json', (route) =>
        route.fulfill({ json: { version: 'another' } })
      );
      await page.route('**/_app/immutable/**', (route) =>
        isAfresh ? route.continue() : route.fulfill({ status: 404, body: 'Not found' })
      );
      page.on('request', (request) => (isAfresh ||= request.isNavigationRequest()));
      return opened();
    }

    // A part of the same page.
    const first = await update();
    await page.getByRole('main').getByRole('listitem').getByRole('link').first().click();
    await expect(page.getByText('This part did not load.').first()).toBeVisible();
    await page.getByRole('button', { name: 'Try again' }).first().click();
    await expect(page.getByText('Try 1 of', { exact: false }).first()).toBeVisible();
    expect(await opened()).not.toBe(first);

    // Another page.
    const second = await update();
    await page.getByRole('link', { name: 'Lessons', exact: true }).first().click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lessons');
    expect(await opened()).not.toBe(second);
  }
);
