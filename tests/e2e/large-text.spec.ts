import { expect, test, type Locator, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { expectUsableAtTwice } from './on-screen';
import { visit } from './page';

async function makeAnyMove(page: Page, place: Locator): Promise<void> {
  await place.getByRole('slider', { name: /^Rod/ }).focus();
  await page.keyboard.down('ArrowUp');
  await expect(place.locator('[data-phase="moving"]')).toBeVisible();
  await page.waitForTimeout(600);
  await page.keyboard.up('ArrowUp');
  await expect(place.locator('.result .change')).not.toBeEmpty();
}

test(
  'a try and its result can be used with letters of twice the size',
  { tag: '@narrow' },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    await page.locator('#predict').getByRole('radio').first().check();
    await page.getByRole('button', { name: 'Lock it in' }).click();
    const step = page.locator('#exactly-one-foot');
    await step.getByRole('button', { name: 'Take the rod' }).click();
    const place = step.getByRole('dialog');
    await expectUsableAtTwice(page, place, 'before');
    await makeAnyMove(page, place);
    await expectUsableAtTwice(page, place, 'result');
  }
);
