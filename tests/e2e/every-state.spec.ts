import { expect, test, type Page } from '@playwright/test';
import { BY_DAY_OR_NIGHT, cutOffAtTwice, spillOf, visit } from './page';

/** Something of another kind than what is asked for. */
const NO_FILE = { name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('{"a": 1}') };

const press = (name: string) => (page: Page) =>
  page.getByRole('main').getByRole('button', { name, exact: true }).click();
const hand = (page: Page) => page.locator('main input[type="file"]').first().setInputFiles(NO_FILE);
const unfold = (page: Page) =>
  page
    .locator('main details')
    .evaluateAll((all: HTMLDetailsElement[]) => all.forEach((one) => (one.open = true)));
const fill = (label: string, text: string, button: string) => async (page: Page) => {
  await page.getByRole('main').getByLabel(label).first().fill(text);
  await press(button)(page);
};
const choose = (name: string) => (page: Page) =>
  page.getByRole('radio', { name, exact: true }).check({ force: true });

/** Done where nothing gets through to the server. */
const cutOffFrom = (into: (page: Page) => Promise<unknown>) => async (page: Page) => {
  await page.route('**/api/**', (route) => route.abort());
  await into(page);
};

/** A state, where it is, how one gets there, and a word that tells that one is. */
type State = [state: string, address: string, into: (page: Page) => Promise<unknown>, says: RegExp];

const nothing = async () => {};

/**
 * States that no other walk looks at. What other walks come by, they look at there. A page is opened once for those of
 * its states that follow one another.
 */
const STATES: readonly State[] = [
  ['all that a first try unfolds', '/', unfold, /Press to go, press to stop/],
  ['water with all unfolded', '/water', unfold, /snag/i],
  ['a retrieve that is shown', '/retrieves', press('The stroke'), /Look at this\./],
  ['a retrieve that a link names', '/retrieves#one-hop', nothing, /One hop/i],
  ['two runs in other gear', '/compare', choose('Your gear'), /First/],
  ['charts of a lift', '/explore', choose('Lift'), /Lift/],
  ['gear with all unfolded', '/gear', unfold, /Save outfit/],
  ['gear that cannot be', '/gear', fill('Weight', 'x', 'Save outfit'), /Weight as 5\/8/],
  ['a clip that is none', '/film', hand, /can’t read that file/],
  ['a session file that is none', '/tests', hand, /can’t be read/],
  ['a session', '/tests', press('Look at a demo'), /made-up afternoon/],
  ['club files that are none', '/tests/club', hand, /a\.json: /],
  ['a record’s file that is none', '/record', hand, /isn’t a Feltfoot record/],
  ['a card with all unfolded', '/card', unfold, /What’s on it/],
  ['a log with its boat', '/log', unfold, /Casts/],
  ['homework with all unfolded', '/homework', unfold, /Safety first/],
  ['homework without a task', '/homework', press('Make the link'), /Choose a lesson/],
  ['a try by a broken link', '/try#abc', nothing, /A try for you/],
  // Not after the same page without the fragment, which would not be opened anew.
  ['homework by a broken link', '/homework#work=abc', nothing, /can’t be read/],
  ['a space without a name', '/guide', press('Open a space'), /What clients call you/],
  ['a clinic that is not there', '/clinic#ZZZZZZ', nothing, /No clinic has that code/],
  [
    'a key that opens nothing',
    '/guide',
    fill('or the link', 'x', 'Open my space'),
    /no key in this/
  ],
  [
    'a space that no connection opens',
    '/guide',
    cutOffFrom(fill('What clients call you', 'Reedmere Guiding', 'Open a space')),
    /No connection/
  ],
  [
    'a clinic without a connection',
    '/clinic',
    cutOffFrom(fill('Code', 'ABCDEF', 'Come in')),
    /keeps trying/
  ],
  ['a lesson that is not there', '/lessons/no-such', nothing, /Page not found/]
];

for (const { light, also, faults } of BY_DAY_OR_NIGHT) {
  test(
    `what is unfolded, refused or not there is accessible ${light}, on a narrow phone and at twice its size`,
    { tag: ['@narrow', ...also] },
    async ({ page }) => {
      test.setTimeout(15_000 * STATES.length);
      await page.emulateMedia({ reducedMotion: 'reduce' });
      let opened = '';
      for (const [state, address, into, says] of STATES) {
        await page.unrouteAll();
        if (address !== opened) await visit(page, address);
        opened = address;
        await into(page);
        await expect(page.getByRole('main'), state).toContainText(says);
        expect.soft(await faults(page), state).toEqual([]);
        expect.soft(await spillOf(page), state).toBeLessThanOrEqual(0);
        expect.soft(await cutOffAtTwice(page), `${state}, letters of twice the size`).toEqual([]);
      }
    }
  );
}
