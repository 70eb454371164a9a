import { expect, test, type Browser, type Page } from '@playwright/test';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { emptyRecord } from '../../src/lib/wire';
import { aTry } from '../practice/samples';
import { turnByKey } from './hand';
import { tryBy } from './made-tries';
import { faultsOf, spillOf, visit } from './page';
import { takeOver } from './take-over';

/** A page of somebody else: another browser, with nothing stored. */
async function someone(browser: Browser): Promise<Page> {
  return (await browser.newContext({ reducedMotion: 'reduce' })).newPage();
}

async function accessible(page: Page): Promise<void> {
  expect(await faultsOf(page)).toEqual([]);
  expect(await spillOf(page)).toBeLessThanOrEqual(0);
}

const LESSONS = loadLessons();
/** The lesson of the homework. */
const LESSON = 'Season and mood';
/** What the question of the homework is about. */
const QUESTION = /Pick a retrieve and pace/;

/** A guide sets two tries of one foot and a question; returns the link. */
async function setHomework(page: Page): Promise<string> {
  await visit(page, '/homework');
  await page.getByRole('textbox', { name: 'From' }).fill('Marit of Reed Bay');
  await page.getByText('One foot', { exact: true }).click();
  await page.getByRole('checkbox', { name: /^Drag it one foot/ }).check();
  await expect(page.getByText('1 chosen')).toHaveCount(1);
  await page.getByText(LESSON, { exact: true }).click();
  await page.getByRole('checkbox', { name: QUESTION }).check();
  const season = page.getByRole('group').filter({ hasText: LESSON });
  await season.getByRole('checkbox', { name: /^The lesson itself/ }).check();
  await page.getByLabel('Questions of each').fill('1');
  await page.getByLabel('Tries of each').fill('2');
  await page.getByRole('button', { name: 'Make the link' }).press('Enter');
  await expect(page.getByRole('img', { name: 'QR code of the link' })).toBeVisible();
  return page.getByLabel('Link to the homework').inputValue();
}

const rod = (page: Page) => page.getByRole('slider', { name: /^Rod/ });

/** Opens the challenge of the homework. */
async function openChallenge(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Drag it one foot' }).press('Enter');
}

/** Opens the try, unless it is open from the one before. */
async function take(page: Page): Promise<void> {
  if (await page.getByRole('dialog').isVisible()) return;
  await page.getByRole('button', { name: 'Take the rod' }).click();
}

async function say(page: Page): Promise<void> {
  const guess = page.getByRole('form', { name: 'Your guess' });
  await guess.getByRole('textbox').fill('15');
  await guess.getByRole('radio', { name: 'stayed down' }).check();
  await page.getByRole('button', { name: 'Call it' }).press('Enter');
}

test('homework goes out as a link, is done by keys, and comes back to be graded again @narrow', async ({
  browser
}) => {
  test.slow();
  const guide = await someone(browser);
  const link = await setHomework(guide);
  await accessible(guide);
  expect(new URL(link).search).toBe('');

  const client = await someone(browser);
  await visit(client, link);
  await expect(client.getByText('From Marit of Reed Bay')).toBeVisible();
  await client.getByRole('link', { name: LESSON }).click();
  await client
    .getByRole('link', { name: 'Back to the homework of Marit of Reed Bay' })
    .first()
    .click();
  await openChallenge(client);
  await take(client);
  await turnByKey(rod(client), 5);
  await expect(client.getByRole('heading', { name: 'What the jig did' })).toBeVisible();
  await client.getByRole('button', { name: 'Next try, 2 of 2' }).press('Enter');
  await client.reload();
  // Left in its midst, it is gone on with.
  await expect(client.getByText('Try 2 of 2, jig hidden')).toBeVisible();
  await take(client);
  await turnByKey(rod(client), 8);
  await say(client);
  const marks = client.locator('.grade .number');
  await expect(marks).toBeVisible();
  const seen = (await marks.textContent()) ?? '';
  await client.reload();
  await openChallenge(client);
  await expect(marks).toHaveText(seen);
  await expect(client.getByRole('button', { name: 'One more try' })).toBeVisible();
  await client.getByRole('button', { name: QUESTION }).press('Enter');
  await client.getByRole('group', { name: 'Your answer' }).getByRole('radio').first().check();
  await client.getByRole('button', { name: 'I knew it' }).press('Enter');
  // The lesson was opened and not gone through.
  await expect(client.getByRole('heading', { name: 'Hand back what you have' })).toBeVisible();
  await accessible(client);
  await client.getByRole('textbox', { name: /Your name/ }).fill('Ove');
  await client.getByRole('button', { name: 'Make the link to send back' }).press('Enter');
  const back = await client.getByLabel('Link to the result').inputValue();

  await guide.goto(back);
  await expect(
    guide.getByRole('heading', { name: 'Ove: Drag it one foot and 2 more' })
  ).toBeVisible();
  await guide.getByRole('button', { name: /^2: / }).press('Enter');
  await expect(guide.locator('.grade .number')).toHaveText(seen);
  await expect(guide.getByText(/^Said: /)).toBeVisible();
  await expect(guide.getByText(/^(Right|Not right), knew/)).toBeVisible();
  await accessible(guide);
});

test(
  'a link that was cut short is said to be so, by name',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    const link = await setHomework(page);
    await page.goto('about:blank');
    await page.goto(link.slice(0, -40));
    await expect(page.getByRole('alert')).toContainText('link: is damaged or was cut short');
    await accessible(page);
  }
);

/** Three tries of the drill by a hand that is a little long, as its first three tasks ask for. */
const THREE = [1, 2, 3].map((n) =>
  aTry(`d${n}`, {
    challenge: `drag-seen-0-${n}`,
    phase: 'seen',
    input: tryBy([n / 10, 0], findChallenge('exactly-one-foot', LESSONS) as Challenge, '').input,
    at: `2030-05-01T08:1${n}:00.000Z`
  })
);

test('the ruler says how to get one, and shows one after the fourth try @narrow @long', async ({
  page
}) => {
  test.slow();
  await visit(page, '/ruler');
  await expect(page.getByText('Four tries show how far yours moves it.')).toBeVisible();
  await accessible(page);
  await takeOver(page, { ...emptyRecord(), tries: THREE });
  await visit(page, '/ruler');
  await page.getByRole('link', { name: /^Drill: / }).click();
  await take(page);
  await turnByKey(rod(page), 8);
  await expect(page.getByRole('heading', { name: 'What the jig did' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Next try, 5 of 8' })).toBeVisible();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  const places = page.getByRole('navigation', { name: 'Main' });
  await places.getByRole('link', { name: 'Your ruler' }).click();
  await expect(page.getByText(/^When you mean .+, the jig (now )?goes/)).toBeVisible();
  await accessible(page);
});
