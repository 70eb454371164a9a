import { expect, type Page } from '@playwright/test';

/** Taps once more where the page was not awake yet: then its heading has the keys. */
export async function beginLesson(page: Page): Promise<void> {
  await expect(async () => {
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await expect(page.locator('section#predict h2')).toBeFocused({ timeout: 1000 });
  }).toPass({ timeout: 20_000 });
}
