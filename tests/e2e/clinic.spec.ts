import { expect, test, type Browser, type Page } from '@playwright/test';
import { turnByKey } from './hand';
import { goToQuestion, next, openClinic, options, phoneIn } from './in-clinic';
import { BY_DAY_OR_NIGHT, cutOffAtTwice, sheetsOf, visit } from './page';
import { expectReadable } from './smallest-text';

/** The phone takes the screen's rod and drags it aside. */
async function sweepFrom(phone: Page, rod: string): Promise<void> {
  await visit(phone, rod);
  const pad = phone.getByRole('slider');
  const { x, y, width, height } = (await pad.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  const middle = y + height / 2;
  await phone.mouse.move(x + width / 3, middle);
  await phone.mouse.down();
  await phone.mouse.move(x + width / 2, middle, { steps: 12 });
  await phone.mouse.up();
}

/** Opens the phone's link home on a device that has nothing yet, and takes it in. */
async function takeHome(browser: Browser, phone: Page): Promise<void> {
  const link = await phone.getByRole('link', { name: /clinic\/home#/ }).innerText();
  const context = await browser.newContext();
  const elsewhere = await context.newPage();
  await visit(elsewhere, link);
  const counts = '1 answer said beforehand, 1 question answered and 1 try';
  await expect(elsewhere.getByText(counts)).toBeVisible();
  await expect(elsewhere.getByRole('heading', { name: 'What you said' })).toBeVisible();
  await elsewhere.getByRole('button', { name: 'Put all 3 into my record' }).click();
  await expect(elsewhere.getByText('All of it is in your record')).toBeVisible();
  await visit(elsewhere, '/record');
  await expect(elsewhere.getByText('1 try kept')).toBeVisible();
  const row = elsewhere.getByRole('row', { name: /^Drag it one foot/ });
  await expect(row).toContainText(/\d+\s(in|ft)\s*\d+/);
  await row.getByRole('button', { name: 'Show' }).click();
  await expect(elsewhere.locator('.plate')).toBeVisible();
  await context.close();
}

async function go(page: Page, to: string): Promise<void> {
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByText(to)).toBeVisible();
}

/** One sweep with the keys; it ends by itself. */
async function makeTry(phone: Page): Promise<void> {
  await phone.getByRole('button', { name: 'Take the rod' }).click();
  await turnByKey(phone.getByRole('slider', { name: /Rod/ }), 5);
}

test(
  'a screen and five phones: a vote is hidden, held, revealed; one phone is cut off in between',
  { tag: '@any-width' },
  async ({ page, browser }) => {
    test.setTimeout(120_000);
    const code = await openClinic(page);
    const phones = await Promise.all(Array.from({ length: 4 }, () => phoneIn(browser, code)));
    await expect(page.getByText('4 here', { exact: true })).toBeVisible();
    await expect(phones[0].getByText('You’re in. Watch the screen.')).toBeVisible();
    await expect(page.getByRole('complementary')).toContainText(
      /Join: scan this, or go to.*and type/s
    );
    await expectReadable(page, 'joining');
    await goToQuestion(page);
    for (const phone of phones) await expect(options(phone).first()).toBeEnabled();

    const late = await phoneIn(browser, code);
    await phones[3].context().setOffline(true);
    await options(phones[0]).nth(0).click();
    await options(phones[1]).nth(1).click();
    await options(phones[2]).nth(1).click();
    await options(phones[3]).nth(1).click();
    await expect(phones[3].getByText(/^Not sent yet/)).toBeVisible();
    await options(late).nth(2).click();
    await expect(page.getByText('4 of 5 answered')).toBeVisible();
    await phones[3].context().setOffline(false);
    await expect(page.getByText('5 of 5 answered')).toBeVisible();
    await expect(phones[3].getByText('Got it. You can still change it.')).toBeVisible();
    await expect(page.locator('.share')).toHaveCount(0);

    await phones[0].reload();
    await expect(options(phones[0]).nth(0)).toHaveAttribute('aria-pressed', 'true');
    await page.getByText('Raised hands').click();
    const hands = page.locator('.bar').getByRole('textbox').nth(1);
    await hands.fill('5.5');
    await hands.blur();
    await expect(page.getByRole('alert')).toHaveText(/type a whole number from 0 to 1000/);
    await hands.fill('5');
    await hands.blur();
    await expect(page.getByRole('alert')).toHaveCount(0);
    await page.getByRole('button', { name: 'Stop voting' }).click();
    await expect(options(late).first()).toBeDisabled();
    await page.getByRole('button', { name: 'Reveal' }).click();
    await expect(page.locator('.share')).toHaveText(['10%', '80%', '10%']);
    await expectReadable(page, 'a vote revealed');
    // Its options are figures: beside the right one the model's own would be a second answer.
    await expect(phones[1].getByText(/^Right\. /)).toBeVisible();
    await expect(phones[1].getByText('toward you', { exact: true })).toHaveCount(0);

    await go(page, 'Another spot');
    await options(phones[1]).nth(0).click();
    await expect(page.getByText('1 of 5 answered')).toBeVisible();
    // What a presenter's clicker sends: the step that is advised.
    await page.keyboard.press('PageDown');
    await page.getByRole('button', { name: 'Reveal' }).click();
    await expect(page.locator('.share').first()).toBeVisible();
    await expect(page.getByRole('region', { name: 'The model’s run' })).toBeVisible();

    await go(page, 'Your hand');
    await makeTry(phones[1]);
    await expect(page.getByText('1 of 5 tried')).toBeVisible();
    await page.getByRole('button', { name: 'Close the round' }).click();
    await page.getByRole('button', { name: 'Reveal' }).click();
    await expectReadable(page, 'tries revealed');
    await page.getByRole('button', { name: 'Replay one try' }).press('Enter');
    const beside = page.getByRole('region', { name: 'Two runs side by side' });
    await expect(beside.getByRole('heading')).toHaveText(['A try of this room', 'The reference']);
    await expectReadable(page, 'a try replayed');
    await page.getByRole('button', { name: 'All tries' }).click();
    await expect(beside).toHaveCount(0);

    await page.getByRole('button', { name: 'A phone as the rod' }).click();
    const rod = await page.getByRole('link', { name: 'The rod’s link' }).getAttribute('href');
    await sweepFrom(late, rod ?? '');
    const water = page.getByRole('region', { name: 'The water of the phone’s rod' });
    await expectReadable(page, 'a phone as the rod');
    await expect(water.getByText('of 100', { exact: true })).toBeVisible();
    const replay = await water.getByRole('button', { name: 'Replay' }).boundingBox();
    const bar = await page.locator('.bar.only-on-screen').boundingBox();
    expect((replay?.y ?? 0) + (replay?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
    await page.getByRole('button', { name: 'Put the rod away' }).click();

    while (!(await page.getByRole('button', { name: 'End' }).isVisible())) await next(page);
    // On the last page of the plan already: not everybody waits for the end.
    await expect(phones[1].getByText('along after that')).toBeVisible();
    await expect(phones[1].getByRole('row', { name: /^Drag it one foot/ })).toContainText(/\d/);
    await expect(phones[1].getByText('About 2 ft right')).toBeVisible();
    await expect(phones[1].getByText(/sits \d+\sft out.*You said: /)).toBeVisible();
    await page.getByRole('button', { name: 'End' }).click();
    await expect(page.getByRole('heading', { name: 'Drills to take home' })).toBeVisible();
    await expect(page.getByRole('heading', { name: 'The room’s hand' })).toBeVisible();
    await expectReadable(page, 'the end');
    await page.setViewportSize({ width: 1280, height: 800 });
    const drill = page.getByText(/^On the water, with a jig: one sweep/);
    const bottom = await drill.evaluate((step) => step.getBoundingClientRect().bottom);
    const foot = await page.locator('.bar').evaluate((bar) => bar.getBoundingClientRect().top);
    expect(bottom, 'drills above the fold').toBeLessThanOrEqual(foot);
    await page.getByRole('button', { name: 'Open it again' }).click();
    await page.getByRole('button', { name: 'End' }).click();
    await phones[1].getByRole('button', { name: 'I figured it out' }).click();
    await expect(phones[1].getByText('along after that')).toHaveCount(0);
    await takeHome(browser, phones[1]);

    await page.getByRole('link', { name: 'Summary' }).click();
    await expect(page.getByText(/of 10 had it/)).toBeVisible();
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await page.getByRole('button', { name: 'Print a handout' }).click();
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByRole('heading', { name: 'One foot: at home, no hook' })).toBeVisible();
    await expect(page.getByRole('heading', { name: 'The room’s hand' })).toBeVisible();
    expect(await sheetsOf(page)).toEqual([1, 1]);
    for (const phone of [...phones, late]) await phone.context().close();
  }
);

test(
  'a hint leads on: after it all have it, and the clicker goes to the answer and the next round',
  { tag: ['@any-width', '@long'] },
  async ({ page, browser }) => {
    test.setTimeout(90_000);
    const code = await openClinic(page);
    const phone = await phoneIn(browser, code);
    await goToQuestion(page);
    await options(phone).nth(0).click();
    await expect(page.getByText('1 of 1 answered')).toBeVisible();
    const press = () => page.keyboard.press('PageDown');
    await press();
    await expect(page.getByText('Next: give the hint')).toBeVisible();
    await press();
    await expect(page.getByText('A hint.')).toBeVisible();
    await expect(page.getByText('Next: vote again')).toBeVisible();
    // The same words on the phone.
    const hint = await page.locator('.hint').innerText();
    await expect(phone.locator('.hint')).toHaveText(hint);
    await expectReadable(page, 'a hint');
    await press();
    await expect(page.getByText('vote 2')).toBeVisible();
    // Hands are counted in any vote, and summed with the phones.
    await options(phone).nth(1).click();
    await page.getByText('Raised hands').click();
    const hands = page.locator('.bar').getByRole('textbox').nth(1);
    await hands.fill('3');
    await hands.blur();
    await expect(page.getByText('1 of 1 answered, 3 hands')).toBeVisible();
    await press();
    await expect(page.getByText('Next: reveal it')).toBeVisible();
    await press();
    await expect(page.locator('.share').nth(1)).toContainText('4 of 4');
    await expect(page.getByText('1 voted first, 4 in this vote.')).toBeVisible();
    await press();
    await expect(page.getByText('Another spot')).toBeVisible();
    await phone.context().close();
  }
);

test(
  'a locked clinic: a new phone is told whom to ask, who is in votes on, who was cleared comes again',
  { tag: ['@any-width', '@long'] },
  async ({ page, browser }) => {
    test.setTimeout(60_000);
    page.on('dialog', (dialog) => dialog.accept());
    const code = await openClinic(page);
    const [voter, silent] = [await phoneIn(browser, code), await phoneIn(browser, code)];
    await goToQuestion(page);
    await options(voter).nth(0).click();
    await expect(page.getByText('1 of 2 answered')).toBeVisible();

    // Who leads has a view of their own, and the way in goes from the screen with the door.
    const leader = await page.context().newPage();
    await visit(leader, `${page.url()}/lead`);
    await expect(leader.getByText(/^Right is: /)).toBeVisible();
    await expect(leader.getByRole('listitem')).not.toHaveCount(0);
    await leader.close();
    await page.getByRole('button', { name: 'Lock the clinic' }).focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('.code')).toHaveCount(0);
    const opening = page.getByRole('button', { name: 'Unlock the clinic' });
    await expect(opening).toBeFocused();
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const late = await context.newPage();
    await visit(late, `/clinic#${code}`);
    const shut = 'This clinic is locked. Ask the leader.';
    await expect(late.getByRole('alert')).toHaveText(shut);
    await voter.reload();
    await options(voter).nth(1).click();
    await expect(options(voter).nth(1)).toHaveAttribute('aria-pressed', 'true');

    await page.getByRole('button', { name: 'Clear 1 phone that has answered nothing' }).click();
    await expect(page.getByText('1 of 1 answered')).toBeVisible();
    await options(silent).nth(2).click();
    await expect(silent.getByRole('alert')).toHaveText(shut);

    await opening.click();
    await expect(page.getByText('The clinic is locked')).toHaveCount(0);
    await options(silent).nth(1).click();
    await late.getByRole('button', { name: 'Come in' }).click();
    await options(late).nth(2).click();
    await expect(page.getByText('3 of 3 answered')).toBeVisible();
    await expect(silent.getByRole('alert')).toHaveCount(0);
    await silent.context().setOffline(true);
    await options(silent).nth(0).click();
    await expect(silent.getByText(/^Not sent yet/)).toBeVisible();
    await page.getByRole('button', { name: 'Stop voting' }).click();
    await silent.context().setOffline(false);
    await expect(silent.getByRole('alert')).toHaveText(/doesn’t count.*earlier vote counts/);
    await expect(options(silent).nth(1)).toHaveAttribute('aria-pressed', 'true');

    const other = await (await browser.newContext()).newPage();
    const second = await openClinic(other);
    await visit(late, `/clinic#${second}`);
    await expect(late.getByText('You’re in. Watch the screen.')).toBeVisible();
    await late.getByRole('button', { name: 'Go to May meeting' }).click();
    await expect(options(late).nth(2)).toHaveAttribute('aria-pressed', 'true');
    await visit(other, '/guide');
    await expect(other.getByRole('link', { name: 'May meeting' })).toHaveCount(1);
    other.on('dialog', (dialog) => dialog.accept());
    await other.getByRole('button', { name: 'Delete May meeting' }).click();
    await expect(other.getByRole('link', { name: 'May meeting' })).toHaveCount(0);
    await other.context().close();
    for (const phone of [voter, silent, late]) await phone.context().close();
  }
);

test(
  'a screen whose key opens nothing more says so, and where the new one goes',
  { tag: '@any-width' },
  async ({ page }) => {
    await openClinic(page);
    await page.context().clearCookies();
    // The feed is asked again, as after a loss of the network.
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await expect(page.getByRole('alert')).toContainText('no longer opens');
    await expect(page.getByText('No connection')).toHaveCount(0);
    await page.getByRole('link', { name: 'Open your space' }).click();
    await expect(page).toHaveURL(/\/guide$/);
  }
);

for (const { light, also, faults } of BY_DAY_OR_NIGHT)
  test(
    `the clinic’s pages have no faults that axe can find ${light}`,
    { tag: ['@any-width', ...also] },
    async ({ page, browser }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      const code = await openClinic(page);
      const phone = await phoneIn(browser, code);
      await phone.emulateMedia({ reducedMotion: 'reduce' });
      await goToQuestion(page);
      await options(phone).nth(1).click();
      expect(await faults(phone)).toEqual([]);
      expect(await cutOffAtTwice(phone)).toEqual([]);
      await expect(page.getByText('1 of 1 answered')).toBeVisible();
      const silent = await phoneIn(browser, code);
      await page.getByRole('button', { name: 'Lock the clinic' }).click();
      await expect(page.getByRole('button', { name: 'Clear 1 phone' })).toBeVisible();
      expect(await faults(page)).toEqual([]);
      expect(await cutOffAtTwice(page)).toEqual([]);
      await silent.context().close();
      await page.getByRole('button', { name: 'Stop voting' }).click();
      await page.getByRole('button', { name: 'Reveal' }).click();
      await expect(page.locator('.share').first()).toBeVisible();
      expect(await faults(page)).toEqual([]);
      expect(await cutOffAtTwice(page)).toEqual([]);
      await page.getByRole('button', { name: 'A phone as the rod' }).click();
      const rod = page.getByRole('link', { name: 'The rod’s link' });
      await visit(phone, (await rod.getAttribute('href')) ?? '');
      await expect(phone.getByRole('slider')).toBeVisible();
      expect([await faults(phone), await faults(page)]).toEqual([[], []]);
      await phone.context().close();
    }
  );
