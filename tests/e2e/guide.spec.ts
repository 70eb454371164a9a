import { expect, test, type Browser, type Page } from '@playwright/test';
import { loadLessons } from '../../src/lib/course';
import { watchAtRest } from './at-rest';
import { turnByKey } from './hand';
import { linkFor, openSpace, postHomework } from './in-guide';
import { BY_DAY_OR_NIGHT, cutOffAtTwice, faultsOf, sheetsOf, visit } from './page';

/** A try ends by itself when hand and bait have been still. */

/** What the questions of the homework are about. */
const QUESTIONS = /Pick a retrieve and pace/;

async function setHomework(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Set homework' }).click();
  await page.getByLabel('Title').fill('Before Saturday');
  await page.getByText('One foot', { exact: true }).click();
  await page.getByRole('checkbox', { name: /^Drag it one foot/ }).check();
  await page.getByText('Season and mood', { exact: true }).click();
  await page.getByRole('checkbox', { name: QUESTIONS }).check();
  await page.getByLabel('Tries of each challenge').fill('1');
  await page.getByLabel('Questions of each kind').fill('1');
  await page.getByLabel('What they see').selectOption('Jig in sight');
  await page.getByRole('button', { name: 'Make the link' }).dblclick();
  await expect(page.getByRole('heading', { name: 'For your clients' })).toBeVisible();
  return linkFor(page);
}

async function clientAt(browser: Browser, link: string, name: string): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  const isAllHere = await watchAtRest(page);
  await visit(page, link);
  // Without the worker that keeps all pages, what later parts are made of has to be here first.
  await expect.poll(isAllHere).toBe(true);
  await page.getByLabel(/^Your name/).fill(name);
  await page.getByRole('button', { name: 'Begin' }).dblclick();
  await expect(page.getByRole('heading', { name: 'Before Saturday' })).toBeVisible();
  await page.getByRole('button', { name: 'Drag it one foot' }).click();
  return page;
}

async function makeTry(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 5);
  await expect(page.getByRole('heading', { name: 'What the jig did' })).toBeVisible();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
}

/** Logs a stop on the water, and adds its day to the homework that is open: by the client’s wish alone. */
async function addLoggedDay(page: Page): Promise<void> {
  const homework = page.url();
  await visit(page, '/log');
  await page
    .getByLabel(/^Place, kept/)
    .locator('xpath=ancestor::details/summary')
    .click();
  await page.getByLabel(/^Place, kept/).fill('North hump');
  await page.getByRole('radio', { name: 'hop', exact: true }).click();
  await page.getByRole('button', { name: 'Fish: more' }).click();
  await page.getByRole('button', { name: 'Log it' }).click();
  await expect(page.getByText(/^Logged\./)).toBeVisible();
  await visit(page, homework);
  await page.getByText('Add days of your log').click();
  await page.getByRole('button', { name: /^Add / }).click();
  await expect(page.getByText('Added', { exact: true })).toBeVisible();
  await expect(page.getByText('All sent.')).toBeVisible();
}

async function answerQuestion(page: Page): Promise<void> {
  await page.getByRole('button', { name: QUESTIONS }).click();
  await answerOpenQuestion(page);
}

async function answerOpenQuestion(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Your answer' }).getByRole('radio').first().check();
  await page.getByRole('button', { name: 'I guessed' }).click();
  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await expect(page.getByText('These questions are done.')).toBeVisible();
}

test(
  'three clients do homework, one of them without a network; tries and answers arrive once',
  { tag: '@any-width' },
  async ({ page, browser }) => {
    test.setTimeout(150_000);
    await openSpace(page);
    const link = await setHomework(page);
    const [ina, bo, wim] = await Promise.all(
      ['Ina', 'Bo', 'Wim'].map((name) => clientAt(browser, link, name))
    );
    // So has practice water, which is fetched when its picture is near.
    await wim.getByRole('button', { name: 'Take the rod' }).click();
    await expect(wim.getByRole('slider', { name: /^Rod/ })).toBeVisible();
    await wim.getByRole('button', { name: 'Close', exact: true }).click();
    await wim.context().setOffline(true);
    // One hand after the other: practice water runs in real time, and a machine has few cores.
    for (const client of [ina, bo, wim]) await makeTry(client);
    await answerQuestion(wim);
    await expect(wim.locator('.sent')).toContainText('2 not sent yet.');
    for (const sender of [ina, bo]) await expect(sender.getByText('All sent.')).toBeVisible();
    await bo.getByRole('button', { name: 'Next: the questions' }).click();
    await expect(bo.getByText('Question 1 of 1')).toBeInViewport();
    await answerOpenQuestion(bo);
    await expect(bo.getByText('Done. Your guide has it all.')).toBeVisible();
    await page.getByLabel('Last day').fill('2031-05-09');
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect(page.getByText('1 of 1 try')).toHaveCount(2);
    await expect(page.getByLabel('Last day')).toHaveValue('2031-05-09');
    await expect(page.getByText(/of 1 right/)).toHaveCount(1);

    await wim.context().setOffline(false);
    await expect(wim.getByText('All sent.')).toBeVisible();
    await page.reload();
    await expect(page.getByText('1 of 1 try')).toHaveCount(3);
    await expect(page.getByText(/[01] of 1 right(, 1 by a guess)?\./)).toHaveCount(2);
    await expect(page.getByText('Tell them: go back to “Season and mood”.').first()).toBeVisible();
    await expect(page.getByText('scored differently on the phone')).toHaveCount(0);

    await page.getByRole('link', { name: 'Wim' }).click();
    // What was asked and what was said are there to teach from.
    await expect(page.getByText(/^Said: /)).toBeVisible();
    await page.goBack();
    await page.getByRole('link', { name: 'Ina' }).click();
    await page.getByRole('button', { name: /^1: / }).click();
    await expect(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();
    await page.getByLabel('Reply').fill('Half as fast, and you have it.');
    await page.getByRole('button', { name: 'Send' }).click();
    await expect(page.getByText(/^Sent\. They/)).toBeVisible();
    await addLoggedDay(ina);
    await expect(ina.getByText('Half as fast, and you have it.')).toBeVisible();

    await page.reload();
    await expect(page.getByText(/^\d+\sft, .*hop, .*1 bite, 1 fish in 10 casts/)).toBeVisible();
    await expect(page.getByText('North hump')).toHaveCount(0);

    await page.getByRole('link', { name: 'Plan a lesson for them' }).click();
    await expect(page.getByRole('heading', { name: 'Ina, 120 minutes' })).toBeVisible();
    await page.getByRole('spinbutton', { name: 'Minutes' }).pressSequentially('0');
    await expect(page.getByRole('button', { name: 'Print' })).toBeDisabled();
    await page.getByRole('spinbutton', { name: 'Minutes' }).fill('60');
    await page.getByRole('spinbutton', { name: 'Depth' }).fill('20');
    await page.getByRole('spinbutton', { name: 'Depth' }).blur();
    await expect(page.getByRole('heading', { name: 'Ina, 60 minutes' })).toBeVisible();
    await expect(page.getByText(/20\sft deep/)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Print' })).toBeEnabled();
    await page.getByRole('combobox', { name: 'Jig' }).selectOption({ index: 6 });
    await expect(page.locator('.figures')).toContainText('1 oz');
    await page.getByRole('link', { name: '“Count it down”' }).click();
    await expect(page.getByRole('checkbox', { name: /^Count it down/ })).toBeChecked();
    await page.goBack();
    ina.on('dialog', (dialog) => void dialog.accept());
    await ina.getByRole('button', { name: 'Delete what I did' }).click();
    await expect(ina.getByRole('button', { name: 'Begin' })).toBeVisible();
    await page.goBack();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Page not found' })).toBeVisible();

    await visit(page, '/guide');
    await expect(page.getByText('2 of 2 clients done')).toBeVisible();
    await page.getByRole('link', { name: 'Before Saturday' }).click();
    await page.getByRole('link', { name: 'Bo' }).click();
    page.on('dialog', (dialog) => void dialog.accept());
    await page.getByRole('button', { name: 'Delete this client' }).click();
    await expect(page.getByRole('link', { name: 'Wim' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Bo' })).toHaveCount(0);
    await bo.reload();
    await expect(bo.getByRole('alert')).toHaveText(/^You’re off this homework/);
    // What was deleted, or lost with a store put back from a backup, is still on the phone.
    await bo.getByRole('button', { name: 'Join again' }).click();
    await expect(bo.getByRole('alert')).toHaveCount(0);
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Bo done' })).toBeVisible();
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByText(/^Closed: nothing more comes in/)).toBeVisible();
    await expect(page.getByRole('heading', { name: 'For your clients' })).toHaveCount(0);
    await visit(ina, link);
    await ina.reload();
    await expect(ina.getByText('Your guide closed this. Nothing more can be sent.')).toBeVisible();
    await expect(ina.getByRole('button', { name: 'Begin' })).toHaveCount(0);
    await wim.reload();
    await expect(wim.getByText('Done. Your guide has it all.')).toBeVisible();
    await expect(wim.getByRole('button', { name: 'Drag it one foot' })).toBeDisabled();
    for (const client of [ina, bo, wim]) await client.context().close();
  }
);

test(
  'a key is shown until it is saved, opens the space elsewhere, and a new key closes it there',
  { tag: '@any-width' },
  async ({ page, browser }) => {
    await openSpace(page);
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.message());
      void dialog.accept();
    });
    await page.reload();
    await page.getByText('Key and space').click();
    await page.getByRole('button', { name: 'Leave this browser' }).click();
    await expect(page.getByRole('alert')).toHaveText(/^Save your key first/);
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await page.getByRole('link', { name: 'Save the key file' }).click();
    await expect(page.getByText(/^Saved as feltfoot-key\.txt/)).toBeVisible();
    const key = await page.locator('.link code').innerText();
    const other = await (await browser.newContext()).newPage();
    await visit(other, key);
    await expect(other.getByRole('heading', { name: 'Reedmere Guiding' })).toBeVisible();
    expect(other.url()).not.toContain('#');
    await page.getByRole('button', { name: 'New key' }).click();
    await expect(page.locator('.link code')).not.toHaveText(key);
    expect(asked).toEqual([expect.stringMatching(/^Make a new key\?/)]);
    await other.reload();
    await expect(other.getByRole('heading', { name: 'For guides' })).toBeVisible();
    // What was not saved outlives the cookie, too.
    await page.context().clearCookies();
    await page.reload();
    await page.getByRole('button', { name: 'Go back in' }).click();
    await expect(page.getByRole('heading', { name: 'Reedmere Guiding' })).toBeVisible();
    await page.getByText('Key and space').click();
    await page.getByRole('link', { name: 'Save the key file' }).click();
    await page.getByRole('button', { name: 'Leave this browser' }).click();
    await expect(page.getByRole('heading', { name: 'For guides' })).toBeVisible();
    expect(asked.at(-1)).toMatch(/^Leave this browser\?/);
    await other.context().close();
  }
);

test(
  'a doubt about gear is told where it is seen and heard; a favorite starts another, and what nobody began is changed',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await openSpace(page);
    await page.getByRole('link', { name: 'Set homework' }).click();
    await page.getByText('Slack', { exact: true }).click();
    await page.getByRole('checkbox', { name: /^The reel takes the slack/ }).check();
    await page.getByText(/as in the lesson: change/).click();
    const gear = page.locator('.gear');
    await gear.getByRole('slider', { name: 'Slack' }).press('End');
    await page.getByRole('button', { name: 'Make the link' }).click();
    await expect(page.getByRole('alert')).toContainText(
      'don’t do “The reel takes the slack” there'
    );
    await expect(page.getByRole('alert')).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('button', { name: 'anyway' })).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('alert')).toContainText(/oz in 10\sft of water: the lesson’s own/);
    await page.getByRole('button', { name: 'Keep as a favorite' }).click();
    await expect(page.getByText('Kept: “The reel takes the slack”.')).toBeVisible();
    await page.getByRole('button', { name: 'Make the link anyway' }).click();
    await expect(page.getByRole('heading', { name: 'For your clients' })).toBeVisible();
    await page.getByRole('link', { name: 'Change it' }).click();
    await page.getByLabel('Title').fill('For Sunday');
    await page.getByRole('button', { name: 'Save it' }).click();
    await page.getByRole('button', { name: 'Save it anyway' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'For Sunday' })).toBeVisible();
    await page.getByRole('link', { name: 'Your space' }).click();
    await page.getByRole('link', { name: 'Set homework' }).click();
    await page.getByRole('button', { name: 'Use it' }).click();
    await expect(page.getByRole('checkbox', { name: /^The reel takes the slack/ })).toBeChecked();
    await expect(page.getByText(/^About \d+ minutes in all\.$/)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
  }
);

for (const { light, also, faults } of BY_DAY_OR_NIGHT) {
  test(
    `the guide’s pages have no faults that axe can find ${light}, nor cut a word off with text at twice its size`,
    { tag: ['@narrow', ...also] },
    async ({ page }) => {
      const expectOpenToAll = async () => {
        expect(await faults(page), page.url()).toEqual([]);
        expect(await cutOffAtTwice(page), page.url()).toEqual([]);
      };
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await visit(page, '/guide');
      await expectOpenToAll();
      await openSpace(page);
      await expectOpenToAll();
      const [, { challenges }] = loadLessons();
      const asked = { title: 'Before Saturday', tries: 1, challenges: challenges.slice(0, 1) };
      await visit(page, await postHomework(page, asked));
      const link = await linkFor(page);
      await expectOpenToAll();
      await visit(page, '/guide/plan');
      await expectOpenToAll();
      await visit(page, link);
      await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
      await expectOpenToAll();
    }
  );
}
