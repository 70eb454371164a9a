import { expect, test, type Browser, type Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { linkFor, openSpace, postHomework } from './in-guide';
import { post, rowsOf, tryBy, type Hand } from './made-tries';
import { sheetsOf, visit } from './page';

const lessons = loadLessons();
const DUE = '2031-05-09';
const IN_TIME = '2031-05-08T12:00:00.000Z';
const LATE = '2031-05-11T12:00:00.000Z';
const TRIES = 4;

/** Three phones: what each hand does, when, and at which of the two tasks. */
const CLIENTS: { name: string; hand: Hand; at: string; does: string[] }[] = [
  { name: 'Ina', hand: [0, 0], at: IN_TIME, does: ['exactly-one-foot', 'one-hop'] },
  { name: 'Bo', hand: [0.5, 0], at: LATE, does: ['exactly-one-foot', 'one-hop'] },
  { name: 'Wim', hand: [-0.5, 0], at: IN_TIME, does: ['one-hop'] }
];

const TASKS = ['exactly-one-foot', 'one-hop'].map((id) => findChallenge(id, lessons) as Challenge);

/** A phone opens the link by hand; its tries, for which practice water takes minutes, are sent as it sends them. */
async function phoneOf(browser: Browser, link: string, n: number): Promise<Page> {
  const { name, hand, at, does } = CLIENTS[n];
  const page = await (await browser.newContext()).newPage();
  await visit(page, link);
  await page.getByLabel(/^Your name/).fill(name);
  const entering = page.waitForRequest('**/api/homework/enter');
  await page.getByRole('button', { name: 'Begin' }).click();
  const { share, token } = (await entering).postDataJSON();
  await expect(page.getByRole('heading', { name: 'Before the trip' })).toBeVisible();
  for (const id of does) {
    const challenge = findChallenge(id, lessons) as Challenge;
    for (let i = 0; i < TRIES; i++) {
      const sent = { ...tryBy(hand, challenge, `${name}-${id}-${i}`), challenge: id, at };
      await post(page.request, '/api/homework/send', { share, token, sent });
    }
  }
  return page;
}

test(
  'a guide with three clients: one on time, one late, one with a part done; who needs which word, a reply, a table and a plan for all',
  { tag: '@any-width' },
  async ({ page, browser }) => {
    test.setTimeout(180_000);
    await openSpace(page);
    await page.getByRole('link', { name: 'Save the key file' }).click();
    await expect(page.getByText(/^Saved as feltfoot-key\.txt/)).toBeVisible();
    const asked = { title: 'Before the trip', tries: TRIES, due: DUE, challenges: TASKS };
    await visit(page, await postHomework(page, asked));
    const link = await linkFor(page);
    const phones: Page[] = [];
    for (const n of CLIENTS.keys()) phones.push(await phoneOf(browser, link, n));
    const [, bo, wim] = phones;

    // Who stands where, and what to say to each hand in the figure of its task.
    await page.reload();
    const of = (name: string) => page.getByRole('article').filter({ hasText: name });
    await expect(of('Ina').getByRole('heading')).toHaveText(/^Ina\s+done$/);
    await expect(of('Bo').getByRole('heading')).toHaveText(/^Bo\s+done, late$/);
    await expect(of('Wim').getByRole('heading')).toHaveText(/^Wim\s+1 of 2 parts done$/);
    await expect(of('Ina').getByText(/In the band/)).toHaveCount(2);
    await expect(of('Bo').getByText(/^Aim .* shorter than feels right\.$/)).toHaveCount(1);
    await expect(of('Wim').getByText(/^Aim .* higher\.$/)).toHaveCount(1);

    const saved = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save as a table' }).click();
    const rows = rowsOf(await readFile(await (await saved).path(), 'utf8'));
    const late = rows.filter(({ Late }) => Late === 'yes');
    expect(rows.filter(({ Kind }) => Kind === 'try')).toHaveLength(5 * TRIES);
    expect([...new Set(late.map(({ Client }) => Client))]).toEqual(['Bo']);

    await page.getByRole('link', { name: 'Bo' }).click();
    await page.getByRole('button', { name: /^1: / }).first().click();
    await expect(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();
    await page.getByLabel('Reply').fill('Half as far, and you have it.');
    await page.getByRole('button', { name: 'Send' }).click();
    await expect(page.getByText(/^Sent\. They/)).toBeVisible();
    await visit(bo, link);
    await bo.reload();
    await expect(bo.getByText('Half as far, and you have it.')).toBeVisible();
    await expect(wim.getByText('Half as far, and you have it.')).toHaveCount(0);

    await visit(page, '/guide');
    await page.getByRole('link', { name: 'Clients at a glance' }).click();
    await expect(page.getByRole('row', { name: /^One hop/ })).toContainText(`${TRIES} of ${TRIES}`);
    await expect(page.getByRole('row', { name: /^Drag it one foot/ })).toContainText('to do');
    await expect(page.getByText('needs a word').first()).toBeVisible();

    await visit(page, '/guide/plan');
    for (const n of [2, 3]) {
      await page.getByRole('button', { name: 'Add someone' }).click();
      await expect(page.getByRole('combobox', { name: `Client ${n}` })).toBeVisible();
    }
    for (const [i, { name }] of CLIENTS.entries()) {
      const choice = page.getByRole('combobox', {
        name: i === 0 ? /^Client( 1)?$/ : `Client ${i + 1}`
      });
      const named = await choice
        .locator('option')
        .filter({ hasText: name })
        .first()
        .getAttribute('value');
      await choice.selectOption(named);
    }
    await expect(page.getByRole('heading', { name: /^Ina, Bo and Wim, / })).toBeVisible();
    // Each hand has its own figures and drill.
    await expect(page.getByRole('row', { name: /^Bo .*too far/ })).toBeVisible();
    expect(await sheetsOf(page)).toEqual([1, 1]);
    for (const phone of phones) await phone.context().close();
  }
);
