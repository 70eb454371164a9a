import { expect, type Page } from '@playwright/test';

/** Of a lesson that was visited, or came by a link. */
export async function beginLesson(page: Page): Promise<void> {
  await page.locator('main[data-awake]').waitFor();
  await page.getByRole('button', { name: /^Begin: / }).click();
  await expect(page.locator('section#predict h2')).toBeFocused();
}
