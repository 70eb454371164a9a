import { expect, test, type Locator, type Page } from '@playwright/test';
import { TOLD } from './hand';
import { goToQuestion, next, openClinic, options, phoneIn } from './in-clinic';
import { expectTryOnScreen } from './on-screen';
import { visit } from './page';

// Outside the lessons: each place where a rod is taken, on five sizes of screen, in each state of a try.
test.describe('on one screen of five sizes', { tag: ['@any-width', '@long'] }, () => {
  test.beforeEach(({ page }) => page.emulateMedia({ reducedMotion: 'reduce' }));

  /** What is told of a try, or that it is not told this time. */
  const told = (place: Locator) => place.locator(`${TOLD}, .told h3`).first();

  /** A row of tries, one after the other on the screen, by the button that leads to the next. */
  async function makeTries(page: Page, count: number): Promise<void> {
    await page.getByRole('button', { name: 'Take the rod' }).first().click();
    const place = page.getByRole('dialog');
    for (let made = 1; made <= count; made++) {
      await expectTryOnScreen(page, place, told(place));
      if (made < count) await place.locator('.onward button.main, .row button.main').click();
    }
  }

  test('practice water', async ({ page }) => {
    await visit(page, '/water');
    await page.getByRole('button', { name: 'Take the rod' }).click();
    const place = page.getByRole('dialog');
    await expectTryOnScreen(page, place, place.locator('.result p').first());
  });

  test('the ruler', async ({ page }) => {
    test.setTimeout(240_000);
    await visit(page, '/ruler');
    await page
      .getByRole('link', { name: /^Drill: / })
      .or(page.getByRole('button', { name: 'Begin' }))
      .click();
    await makeTries(page, 3);
  });

  for (const drill of ['drag', 'hop', 'count'])
    test(`the drill ${drill}`, async ({ page }) => {
      test.setTimeout(240_000);
      await visit(page, `/ruler/practise?drill=${drill}`);
      await makeTries(page, 2);
    });

  test('homework, by link', async ({ page }) => {
    test.setTimeout(240_000);
    await visit(page, '/homework');
    await page.getByRole('textbox', { name: 'From' }).fill('Marit of Reed Bay');
    await page.getByText('One foot', { exact: true }).click();
    await page.getByRole('checkbox', { name: /^Drag it one foot/ }).check();
    await page.getByLabel('Tries of each').fill('2');
    await page.getByRole('button', { name: 'Make the link' }).press('Enter');
    await visit(page, await page.getByLabel('Link to the homework').inputValue());
    await page.getByRole('button', { name: 'Drag it one foot' }).press('Enter');
    await makeTries(page, 2);
  });

  test('a hall’s phone', async ({ page, browser }) => {
    test.setTimeout(240_000);
    const phone = await phoneIn(browser, await openClinic(page));
    await goToQuestion(page);
    await expect(options(phone).first()).toBeEnabled();
    while (!(await page.getByText('Your hand').isVisible())) await next(page);
    await makeTries(phone, 1);
  });
});
