import { expect, test, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { turnByKey } from './hand';
import { faultsByDayAndNight, visit } from './page';
import { smallTargets } from './targets';

/** As it stands now: what axe finds by day and by night, and controls too small for a finger. */
async function expectOpenToAll(page: Page, state: string): Promise<void> {
  expect(await faultsByDayAndNight(page), state).toEqual([]);
  expect(await smallTargets(page), state).toEqual([]);
}

test(
  'a result, its replay, what is sent of it and a record that holds it are accessible',
  { tag: '@narrow' },
  async ({ page }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, '/lessons/one-foot');
    await beginLesson(page);
    const asked = page.locator('section#predict');
    await asked.getByRole('radio').first().check();
    await expectOpenToAll(page, 'picked');
    await asked.getByRole('button', { name: 'Lock it in' }).click();
    await expectOpenToAll(page, 'answered');
    const step = page.locator('#exactly-one-foot');
    await step.getByRole('button', { name: 'Take the rod' }).click();
    await step.getByText('More', { exact: true }).click();
    await expectOpenToAll(page, 'the rod with all that is unfolded');
    await step.getByText('More', { exact: true }).click();
    await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 8);
    await expect(step.locator('.grade .change')).not.toBeEmpty();
    await expectOpenToAll(page, 'the result');
    await step.getByText('How the marks add up').click();
    await expectOpenToAll(page, 'how the marks add up');
    await step.getByText('How the marks add up').click();
    await step.getByRole('button', { name: 'Send it' }).click();
    await expect(step.locator(':popover-open')).toBeVisible();
    await expectOpenToAll(page, 'what is sent of it');
    await page.keyboard.press('Escape');
    await step.getByRole('button', { name: 'Replay', exact: true }).click();
    await expectOpenToAll(page, 'the replay');
    await step.getByRole('button', { name: 'Close', exact: true }).first().click();
    await expectOpenToAll(page, 'the lesson with a try');
    await visit(page, '/record');
    await expect(page.getByText('1 try kept')).toBeVisible();
    await expectOpenToAll(page, 'a record');
    await page.getByRole('button', { name: 'Erase', exact: true }).click();
    await expectOpenToAll(page, 'a record about to be erased');
  }
);

test('what was typed wrong is told accessibly', { tag: '@narrow' }, async ({ page }) => {
  await visit(page, '/guide');
  await page.getByRole('button', { name: 'Open a space' }).click();
  await expectOpenToAll(page, 'a space without a name');
  await visit(page, '/clinic#ZZZZZZ');
  const says = page
    .getByRole('alert')
    .or(page.getByRole('status'))
    .filter({ hasText: /ZZZZZZ|clinic/i });
  await expect(says.filter({ visible: true }).first()).toBeVisible();
  await expectOpenToAll(page, 'a clinic that is not there');
});
