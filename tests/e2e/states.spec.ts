import { expect, test, type Locator, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { TOLD, turnByKey } from './hand';
import { expectWordsClear } from './on-screen';
import { longMotions, longStyles } from './motions';
import { BY_DAY_OR_NIGHT, faultsByDayAndNight, visit } from './page';

/** As it stands now, by day and by night. */
async function expectOpenToAll(page: Page, state: string): Promise<void> {
  expect(await faultsByDayAndNight(page), state).toEqual([]);
}

for (const { light, also, faults } of BY_DAY_OR_NIGHT) {
  test(
    `a result, its replay, what is sent of it and a record that holds it are accessible ${light}`,
    { tag: ['@narrow', ...also] },
    async ({ page }) => {
      const expectOpen = async (state: string) => expect(await faults(page), state).toEqual([]);
      test.slow();
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await visit(page, '/lessons/one-foot');
      await beginLesson(page);
      const asked = page.locator('section#predict');
      await asked.getByRole('radio').first().check();
      await expectOpen('picked');
      await asked.getByRole('button', { name: 'Lock it in' }).click();
      await expectOpen('answered');
      const step = page.locator('#exactly-one-foot');
      await step.getByRole('button', { name: 'Take the rod' }).click();
      await step.getByText('More', { exact: true }).click();
      await expectOpen('the rod with all that is unfolded');
      await step.getByText('More', { exact: true }).click();
      await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 8);
      await expect(step.locator(TOLD)).not.toBeEmpty();
      await expectOpen('the result');
      await step.getByText('How the marks add up').click();
      await expectOpen('how the marks add up');
      await step.getByText('How the marks add up').click();
      await step.getByRole('button', { name: 'Send it' }).click();
      await expect(step.getByRole('dialog', { name: 'Send this try' })).toBeVisible();
      await expectOpen('what is sent of it');
      await page.keyboard.press('Escape');
      await step.getByRole('button', { name: 'Replay', exact: true }).click();
      await expectOpen('the replay');
      await step.getByRole('button', { name: 'Close', exact: true }).first().click();
      await expectOpen('the lesson with a try');
      await visit(page, '/record');
      await expect(page.getByText('1 try kept')).toBeVisible();
      await expectOpen('a record');
      await page.getByRole('button', { name: 'Erase', exact: true }).click();
      await expectOpen('a record about to be erased');
    }
  );
}

const FORCED = { forcedColors: 'active', reducedMotion: 'reduce' } as const;

/** The first task of a lesson, its questions answered. */
async function openTask(page: Page, lesson: string, task: string): Promise<Locator> {
  await visit(page, `/lessons/${lesson}`);
  await beginLesson(page);
  const asked = page.locator('section#predict');
  const option = asked.getByRole('radio').first();
  if (await option.isVisible()) await option.check();
  else await asked.getByRole('button', { name: 'More' }).click();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
  const step = page.locator(`#${task}`);
  await step.getByRole('button', { name: 'Take the rod' }).click();
  return step;
}

test(
  'what a wrong call costs is accessible, by night and with forced colors',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const step = await openTask(page, 'your-hands-ruler', 'one-foot-half-seen');
    await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 10);
    const guess = step.getByRole('form', { name: 'Your guess' });
    await guess.getByRole('textbox').fill('99');
    await guess.getByRole('radio').first().check();
    await guess.getByRole('button', { name: 'Call it' }).click();
    await step.getByText('How the marks add up').click();
    await expect(step.getByRole('row', { name: /^Your call .* costs 30 of 30$/ })).toBeVisible();
    await expectWordsClear(page, step.getByRole('dialog'), 'how the marks add up');
    await expectOpenToAll(page, 'a wrong call');
    await page.emulateMedia(FORCED);
    await expectOpenToAll(page, 'a wrong call with forced colors');
    // The next is in sight, and says what it is for.
    await step.getByRole('button', { name: 'Try it with the jig showing' }).click();
    await expect(step.getByRole('dialog').getByText('Call it')).toHaveCount(0);
    await expect(step.getByText('Jig showing this time. Only a hidden try counts.')).toBeVisible();
    await turnByKey(step.getByRole('slider', { name: /^Rod/ }), 10);
    // Not even a right one is told as a pass: the bright button goes to what counts.
    await expect(step.getByText('Not counted: you could see it.')).toBeVisible();
    await expectWordsClear(page, step.getByRole('dialog'), 'a try in sight');
    await expect(step.getByText('of 100')).toHaveCount(0);
    await expect(step.getByText('Nothing to change')).toHaveCount(0);
    await expect(step.locator('.result button.main')).toHaveText('Now with the jig hidden');
    await expect(step.getByRole('button', { name: /^Next: / })).not.toHaveClass(/main/);
    await expectOpenToAll(page, 'a try in sight');
    await step.getByRole('button', { name: 'Close', exact: true }).first().click();
    const tries = step.getByRole('group', { name: 'Your tries' }).getByRole('button');
    await expect(tries).toHaveText([/^\s*\d+\s*$/, 'in sight']);
  }
);

test(
  'a rod over a snag stands still and is accessible with forced colors',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.emulateMedia(FORCED);
    const step = await openTask(page, 'snags', 'free-from-above');
    const rod = step.getByRole('slider', { name: /^Rod/ });
    await expect(rod).toBeFocused();
    await expectOpenToAll(page, 'before');
    await turnByKey(rod, 6);
    await step.getByRole('button', { name: 'Done', exact: true }).click();
    await expect(step.locator(TOLD)).not.toBeEmpty();
    expect([...(await longMotions(page)), ...(await longStyles(page))]).toEqual([]);
    await expectOpenToAll(page, 'its result');
  }
);
