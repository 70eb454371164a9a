import { expect, test } from '@playwright/test';
import { turnByKey } from './hand';
import { faultsOf, visit } from './page';

test(
  'what a link holds is exactly that try',
  { tag: ['@any-width', '@long'] },
  async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/');
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
    const bait = page.locator('figure.bottom figcaption b');
    await expect(page.locator('.result')).toBeVisible();
    const went = await bait.first().textContent();
    const before = await page.locator('figure.bottom').boundingBox();
    await page.getByRole('button', { name: 'Send it' }).click();
    const sheet = page.getByRole('dialog', { name: 'Send this try' });
    await expect(sheet.getByRole('img', { name: /^I wanted 1\sft\..* of 100\./ })).toBeVisible();
    await expect(sheet.getByRole('link', { name: 'Save the picture' })).toBeVisible();
    await sheet.getByRole('button', { name: 'Copy' }).click();
    await expect(sheet.getByRole('status')).toHaveText('Copied.');
    const link = await sheet.getByRole('textbox', { name: 'Link to this try' }).inputValue();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);
    expect(await faultsOf(page)).toEqual([]);
    await sheet.getByRole('button', { name: 'Close' }).click();
    // What was sent lay over the water, which kept its size.
    expect(await page.locator('figure.bottom').boundingBox()).toEqual(before);
    await visit(page, '/about');
    await visit(page, link);
    await expect(
      page.getByRole('heading', { level: 1, name: /^Can you (beat it|do it, too)\?$/ })
    ).toBeVisible();
    await expect(
      page.getByText(new RegExp(`The jig went ${went}(, but .*)?\\. \\d+ of 100\\.`))
    ).toBeVisible();
  }
);
