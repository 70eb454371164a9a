import { expect, test } from '@playwright/test';
import { visit } from './page';

test('the first page answers with security headers and without errors', async ({ page }) => {
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
});

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
