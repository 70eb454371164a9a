import { expect, test, type Locator, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { TOLD } from './hand';
import { expectUsableAtTwice } from './on-screen';
import { visit } from './page';

/** @param told what is there once the hand has been still */
async function makeAnyMove(page: Page, place: Locator, told = TOLD): Promise<void> {
  await place.getByRole('slider', { name: /^Rod/ }).focus();
  await page.keyboard.down('ArrowUp');
  await expect(place.locator('[data-phase="moving"]')).toBeVisible();
  await page.waitForTimeout(600);
  await page.keyboard.up('ArrowUp');
  await expect(place.locator(told)).not.toBeEmpty();
}

test(
  'a try and its result can be used with letters of twice the size',
  { tag: ['@narrow', '@long'] },
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

test(
  'so can the first try, seen from the deck',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/');
    const place = page.locator('.first');
    await expectUsableAtTwice(page, place, 'from the deck');
    await place.getByRole('slider', { name: /^Rod/ }).focus();
    await page.keyboard.down('ArrowUp');
    await page.waitForTimeout(600);
    await page.keyboard.up('ArrowUp');
    await expect(place.locator(TOLD)).not.toBeEmpty();
    await expectUsableAtTwice(page, place, 'the result from the deck');
  }
);

test('so can a drill', { tag: ['@narrow', '@long'] }, async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, '/ruler/practise?drill=drag');
  await page.getByRole('button', { name: 'Take the rod' }).click();
  const place = page.getByRole('dialog');
  await expectUsableAtTwice(page, place, 'a drill');
  await makeAnyMove(page, place);
  await expectUsableAtTwice(page, place, 'the result of a drill');
});

test('so can the form that asks what a hidden jig did', { tag: '@narrow' }, async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, '/water');
  await page.getByRole('radio', { name: 'From the deck' }).check();
  await page.getByRole('button', { name: 'Take the rod' }).click();
  const place = page.getByRole('dialog');
  await expectUsableAtTwice(page, place, 'hidden');
  await makeAnyMove(page, place, '.layer .ask');
  await expectUsableAtTwice(page, place, 'called');
  await place.getByRole('textbox').fill('9');
  await place.getByRole('radio').first().check();
  await place.getByRole('button', { name: 'Call it' }).click();
  await expect(place.locator('.result')).toBeVisible();
  await expectUsableAtTwice(page, place, 'after the call');
});
