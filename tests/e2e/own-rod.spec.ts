import { expect, test, type Page } from '@playwright/test';
import { beginLesson } from './begin';
import { cameraOn, pageBefore, posesOf, writeCamera } from './fake-camera';
import { faultsOf, spillOf, visit } from './page';

const pose = (to_deg: number) => ({ to_deg, in_s: 0.4, hold_s: 1.1 });
/** Still for a while, over the marks and back, then the foot of the lesson: from 60 to 70 degrees. */
const SECONDS = 31;
const foot = posesOf([
  { to_deg: 0, in_s: 0, hold_s: 7 },
  ...[30, 60, 90, 60, 30].map(pose),
  pose(0),
  { to_deg: 60, in_s: 0.5, hold_s: 5 },
  { to_deg: 70, in_s: 2.5, hold_s: 7 }
]);
/** The clip begins anew where it ended: a hand that comes late is waited for. */
const ONCE_MORE = { timeout: 3 * SECONDS * 1000 };
const GRADED = /^Graded from the film, ± .*\sin\.$/;

async function inLesson(page: Page): Promise<void> {
  await visit(page, '/lessons/one-foot');
  await beginLesson(page);
  const asked = page.locator('section#predict');
  await asked.getByRole('radio').nth(1).check();
  await asked.getByRole('button', { name: 'Lock it in' }).click();
  await page.getByRole('button', { name: 'Next: See it' }).click();
  await page.getByRole('button', { name: 'Next: Drag it one foot' }).click();
  await cameraOn(page, ONCE_MORE);
  await expect(page.getByText(GRADED)).toBeVisible(ONCE_MORE);
  // A grade is the film’s, and the challenge’s own.
  await expect(page.locator('.grade .number').first()).toBeVisible();
  await page.getByRole('button', { name: 'Close', exact: true }).first().click();
}

/** Two tries of the ruler’s drill; the camera and the marks on the floor are set up once. */
async function inDrill(page: Page): Promise<void> {
  await visit(page, '/ruler');
  await page.getByRole('link', { name: /^Drill: / }).click();
  await cameraOn(page, ONCE_MORE);
  for (const n of [1, 2]) {
    await expect(page.getByText(GRADED)).toBeVisible(ONCE_MORE);
    await expect(page.getByRole('heading', { name: 'What the jig did' })).toBeVisible();
    if (n === 1) await page.getByRole('button', { name: 'Next try, 2 of 8' }).press('Enter');
  }
  await page.getByRole('button', { name: 'Close', exact: true }).click();
}

async function inHomework(page: Page): Promise<string> {
  await visit(page, '/homework');
  await page.getByRole('textbox', { name: 'From' }).fill('Marit of Reed Bay');
  await page.getByText('One foot', { exact: true }).click();
  await page.getByRole('checkbox', { name: /^Drag it one foot/ }).check();
  await page.getByLabel('Tries of each').fill('1');
  await page.getByRole('button', { name: 'Make the link' }).press('Enter');
  const link = await page.getByLabel('Link to the homework').inputValue();
  await page.goto('about:blank');
  await visit(page, link);
  await page.getByRole('button', { name: 'Drag it one foot' }).press('Enter');
  await cameraOn(page, ONCE_MORE);
  await expect(page.getByText(GRADED)).toBeVisible(ONCE_MORE);
  await page.getByRole('button', { name: 'Close', exact: true }).first().click();
  await page.getByRole('textbox', { name: /Your name/ }).fill('Ove');
  await page.getByRole('button', { name: 'Make the link to send back' }).press('Enter');
  return page.getByLabel('Link to the result').inputValue();
}

test(
  'one’s own rod before a camera makes the tries of a lesson, a drill, the ruler and homework',
  {
    tag: ['@any-width', '@long']
  },
  async ({ baseURL }, info) => {
    test.setTimeout(600_000);
    const clip = info.outputPath('rod.y4m');
    writeCamera(clip, SECONDS, foot);
    const page = await pageBefore(clip, baseURL);
    await inLesson(page);
    await inDrill(page);
    const back = await inHomework(page);

    await visit(page, '/ruler');
    await expect(page.getByText(/^\d so far\.$/)).toBeVisible();
    await visit(page, '/record');
    await expect(page.getByText(/, real rod$/)).toHaveCount(3);
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await page.goto('about:blank');
    await visit(page, back);
    await expect(page.getByRole('heading', { name: /^Ove: Drag it one foot/ })).toBeVisible();
    await expect(page.getByText(/real rod/).first()).toBeVisible();
    await page.context().browser()?.close();
  }
);
