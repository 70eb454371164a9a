import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';

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

for (const colorScheme of ['light', 'dark'] as const) {
  test(`the first page is accessible in the ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto('/');
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

test('nothing is wider than the window', async ({ page }) => {
  await page.goto('/');
  const spill = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(spill).toBeLessThanOrEqual(0);
});

test('a chosen night is there again at the next visit, from the first paint on', async ({
  page
}) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('/');
  const ground = () =>
    page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const byDay = await ground();
  await page.getByRole('radio', { name: 'Night' }).check();
  const byNight = await ground();
  expect(byNight).not.toBe(byDay);
  await page.reload({ waitUntil: 'commit' });
  await page.waitForSelector('main', { state: 'attached' });
  expect(await ground()).toBe(byNight);
});

test('the first page opens without a connection', async ({ page, context }) => {
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Night' })).toBeVisible();
});
