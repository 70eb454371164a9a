import { expect, test } from '@playwright/test';
import { faultsOf, spillOf, visit } from './page';

test.use({ serviceWorkers: 'allow' });

test(
  'a boat card is made with the rows that were chosen, is one page, and opens again without a connection',
  { tag: '@narrow' },
  async ({ page, context }) => {
    await visit(page, '/card');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.getByRole('radio', { name: 'A6' }).check();
    await page.locator('summary').click();
    await page.getByRole('checkbox', { name: 'Snagged' }).check();
    await page.getByRole('checkbox', { name: 'Count it down' }).uncheck();
    await page.getByRole('button', { name: 'Make the card' }).press('Enter');
    const card = page.getByRole('article', { name: 'Practice gear' });
    await expect(card).toBeVisible({ timeout: 60_000 });
    await expect(card.getByText(/^1 of 3$/)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await card.getByRole('button', { name: 'Next' }).press('Enter');
    await expect(card.getByRole('heading', { name: 'How fast can I drag?' })).toBeInViewport();

    const sheet = await page.pdf({ preferCSSPageSize: true });
    const text = sheet.toString('latin1');
    expect(text.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    // 105 mm by 148 mm, in points.
    expect(text).toMatch(/MediaBox\s*\[0 0 298(\.\d+)? (419|420)(\.\d+)?\]/);

    const link = page.url();
    await context.setOffline(true);
    await page.goto('/');
    await page.goto(link);
    await expect(page.getByRole('article', { name: 'Practice gear' })).toBeVisible();
  }
);
