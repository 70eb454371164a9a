import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';

/** The model works a question out in a second or two; on a busy machine in many more. */
const WORKED_OUT = { timeout: 40_000 };
const knew = (page: Page) => page.getByRole('button', { name: 'I knew it' });

/** Answers whatever kind it is, by keys alone. */
async function giveByKeys(page: Page): Promise<void> {
  const mark = page.getByRole('slider', { name: 'Your mark' });
  const asItStands = page.getByRole('button', { name: 'It is right as it stands' });
  if (await mark.count()) {
    await mark.focus();
    await page.keyboard.press('PageUp');
  } else if (await asItStands.count()) {
    await asItStands.focus();
    await page.keyboard.press('Enter');
  } else {
    await page.getByRole('group', { name: 'Your answer' }).getByRole('radio').first().focus();
    await page.keyboard.press('Space');
  }
}

test('the whole set by keys, and then where one stands', async ({ page }) => {
  test.setTimeout(240_000);
  await page.goto('/quiz');
  for (let i = 1; i <= 8; i++) {
    await expect(page.getByText(`${i} of 8`)).toBeVisible(WORKED_OUT);
    await expect(knew(page)).toBeVisible(WORKED_OUT);
    await expect(knew(page)).toBeDisabled();
    await giveByKeys(page);
    await knew(page).focus();
    await page.keyboard.press('Enter');
    const goOn = page.getByRole('button', { name: 'Go on' });
    await expect(goOn).toBeVisible();
    await goOn.focus();
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText('That was all for today.')).toBeVisible();
  await page.getByRole('link', { name: 'Where you stand' }).click();
  await expect(page.getByText('1 answer:').first()).toBeVisible();
  await page.goto('/quiz');
  await expect(page.getByText('Today’s questions are done.')).toBeVisible();
});

test('a question is answered, explained and shown in the water without a network', async ({
  page,
  context,
  hasTouch
}) => {
  test.setTimeout(120_000);
  await page.goto('/quiz');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);
  await page.reload();
  await expect(knew(page)).toBeVisible(WORKED_OUT);
  const option = page.getByRole('group', { name: 'Your answer' }).locator('label').first();
  if (await option.count()) await (hasTouch ? option.tap() : option.click());
  else await giveByKeys(page);
  const guessed = page.getByRole('button', { name: 'I guessed' });
  await (hasTouch ? guessed.tap() : guessed.click());
  await expect(page.locator('.told')).toBeFocused();
  const see = page.getByRole('button', { name: 'See it in the water' });
  if (await see.count()) {
    await see.click();
    await expect(page.getByRole('button', { name: 'Show me' })).toBeVisible();
  }
});

for (const colorScheme of ['light', 'dark'] as const) {
  for (const path of ['/quiz', '/standing', '/standing/items', '/print-quiz?seed=7']) {
    test(`${path} passes axe and fits, ${colorScheme}`, async ({ page }) => {
      test.setTimeout(120_000);
      await page.emulateMedia({ colorScheme });
      await page.goto(path);
      if (path === '/quiz') await expect(knew(page)).toBeVisible(WORKED_OUT);
      if (path.startsWith('/print'))
        await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled(WORKED_OUT);
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
    });
  }
}
