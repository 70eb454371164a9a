import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';

async function openSpace(page: Page): Promise<void> {
  await page.goto('/guide');
  await page.getByLabel('What clients call you').fill('Reedmere Guiding');
  await page.getByRole('button', { name: 'Open a space' }).click();
  await expect(page.getByRole('link', { name: 'Save the key file' })).toBeVisible();
}

async function setHomework(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Set homework' }).click();
  await page.getByLabel('Title').fill('Before Saturday');
  await page.getByRole('checkbox', { name: /Exactly one foot/ }).check();
  await page.getByLabel('Tries of each challenge').fill('1');
  await page.getByRole('button', { name: 'Make the link' }).click();
  await expect(page.getByRole('heading', { name: 'For your clients' })).toBeVisible();
  return page.locator('.share code').innerText();
}

test(
  'the key opens the space on another device, and a new key closes it there',
  { tag: '@any-width' },
  async ({ page, browser }) => {
    await openSpace(page);
    const key = await page.locator('.link code').innerText();
    const other = await (await browser.newContext()).newPage();
    await other.goto(key);
    await expect(other.getByRole('heading', { name: 'Reedmere Guiding' })).toBeVisible();
    expect(other.url()).not.toContain('#');
    await page.getByText('Key and space').click();
    await page.getByRole('button', { name: 'New key' }).click();
    await expect(page.locator('.link code')).not.toHaveText(key);
    await other.reload();
    await expect(other.getByRole('heading', { name: 'For guides' })).toBeVisible();
    await other.context().close();
  }
);

for (const scheme of ['light', 'dark'] as const) {
  test(`the guide’s pages have no faults that axe can find (${scheme})`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    const faults = async () => (await new AxeBuilder({ page }).analyze()).violations;
    await page.goto('/guide');
    expect(await faults()).toEqual([]);
    await openSpace(page);
    expect(await faults()).toEqual([]);
    const link = await setHomework(page);
    expect(await faults()).toEqual([]);
    await page.goto('/guide/plan');
    expect(await faults()).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(
      await page.evaluate(() => document.documentElement.clientWidth)
    );
    await page.goto(link);
    await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
    expect(await faults()).toEqual([]);
  });
}
