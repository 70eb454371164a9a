import { test, type Locator, type Page } from '@playwright/test';
import { loadLessons, type Lesson } from '../../src/lib/course';
import { beginLesson } from './begin';
import { TOLD } from './hand';
import { expectTryOnScreen } from './on-screen';
import { visit } from './page';

async function openTries(page: Page, lesson: Lesson): Promise<void> {
  await visit(page, `/lessons/${lesson.id}`);
  await beginLesson(page);
  const asked = page.locator('#predict');
  if ((await asked.getByRole('radio').count()) > 0) await asked.getByRole('radio').first().check();
  else await asked.getByRole('button', { name: 'More' }).click();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
}

async function makeTry(page: Page, step: Locator): Promise<void> {
  await step.getByRole('button', { name: 'Take the rod' }).click();
  const place = step.getByRole('dialog');
  await expectTryOnScreen(page, place, place.locator(TOLD));
  await place.getByRole('button', { name: 'Close', exact: true }).first().click();
}

for (const lesson of loadLessons().filter(({ challenges }) => challenges.length > 0)) {
  test(
    `every try of ${lesson.id} stands on one screen of five sizes, in each of its states`,
    { tag: ['@any-width', '@long'] },
    async ({ page }) => {
      test.setTimeout(60_000 * lesson.challenges.length);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await openTries(page, lesson);
      for (const { id } of lesson.challenges) await makeTry(page, page.locator(`#${id}`));
    }
  );
}
