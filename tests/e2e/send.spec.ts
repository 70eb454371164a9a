import { expect, test, type Page } from '@playwright/test';
import { turnByKey } from './hand';
import { longMotions, longStyles } from './motions';
import { faultsByDayAndNight, visit } from './page';

/** What the stubbed share sheet of the device was handed. */
interface Handed {
  shared: { text: string; url: string; files: string[] }[];
  copied: string[];
}

/** A device with a share sheet: it takes what it is handed, or answers with an error of that name. */
async function withShareSheet(page: Page, answer: string | null, takesFiles = true): Promise<void> {
  await page.addInitScript(
    ({ answer, takesFiles }) => {
      const handed = Object.assign(window as unknown as Handed, { shared: [], copied: [] });
      navigator.canShare = (data) => takesFiles || !data?.files;
      navigator.share = ({ text = '', url = '', files = [] } = {}) => {
        handed.shared.push({ text, url, files: files.map(({ name, type }) => `${name} ${type}`) });
        return answer ? Promise.reject(new DOMException('', answer)) : Promise.resolve();
      };
    },
    { answer, takesFiles }
  );
}

const shared = (page: Page) => page.evaluate(() => (window as unknown as Handed).shared);
const sheet = (page: Page) => page.getByRole('dialog', { name: 'Send this try' });

/** A try on the front page, and its button to send it. */
async function send(page: Page): Promise<string[]> {
  const errors: string[] = [];
  page.on('pageerror', ({ message }) => errors.push(message));
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, '/');
  await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
  await page.getByRole('button', { name: 'Send it' }).click();
  return errors;
}

test.describe('what is sent of a try', { tag: '@narrow' }, () => {
  test('goes to the device’s share sheet, picture and link', async ({ page }) => {
    await withShareSheet(page, null);
    const errors = await send(page);
    await expect.poll(() => shared(page)).toHaveLength(1);
    const [{ text, url, files }] = await shared(page);
    expect(text).toMatch(/^I wanted 1\sft\. The jig went .* Can you (beat it|do it, too)\?$/);
    expect(new URL(url).pathname).toBe('/try');
    expect(new URL(url).hash).toMatch(/^#c=exactly-one-foot&/);
    expect(files).toEqual(['feltfoot-try.png image/png']);
    await expect(sheet(page)).toHaveCount(0);
    expect(errors).toEqual([]);
  });

  test('goes there without the picture where the sheet takes none', async ({ page }) => {
    await withShareSheet(page, null, false);
    await send(page);
    await expect.poll(() => shared(page)).toMatchObject([{ files: [] }]);
  });

  test('is left alone when the sheet is put away, and can be sent again', async ({ page }) => {
    await withShareSheet(page, 'AbortError');
    const errors = await send(page);
    await expect.poll(() => shared(page)).toHaveLength(1);
    await expect(sheet(page)).toHaveCount(0);
    await page.getByRole('button', { name: 'Send it' }).click();
    await expect.poll(() => shared(page)).toHaveLength(2);
    expect(errors).toEqual([]);
  });

  test('is offered on a sheet of ours where the device refuses', async ({ page }) => {
    await withShareSheet(page, 'NotAllowedError');
    const errors = await send(page);
    await expect(sheet(page).getByRole('button', { name: 'Copy' })).toBeVisible();
    await expect(sheet(page).getByRole('img', { name: /^I wanted 1\sft\./ })).toBeVisible();
    // The test's server is this machine: whoever else is sent the link gets nowhere.
    await expect(sheet(page).getByText('This link works on this device only.')).toBeVisible();
    await expect(sheet(page).getByText(/^Anyone who opens/)).toHaveCount(0);
    await sheet(page).getByRole('button', { name: 'Share' }).click();
    await expect.poll(() => shared(page)).toHaveLength(2);
    expect(errors).toEqual([]);
  });

  test('is copied over plain http, where a page has no clipboard, or held to be copied', async ({
    page
  }) => {
    await page.addInitScript(() => {
      const handed = Object.assign(window as unknown as Handed, { shared: [], copied: [] });
      Object.defineProperty(navigator, 'clipboard', { value: undefined });
      document.addEventListener('copy', () =>
        handed.copied.push(String(document.getSelection() ?? ''))
      );
    });
    const errors = await send(page);
    const copy = sheet(page).getByRole('button', { name: 'Copy' });
    await expect(copy).toBeFocused();
    await copy.click();
    await expect(sheet(page).getByRole('status')).toHaveText('Copied.');
    const link = await sheet(page).getByRole('textbox', { name: 'Link to this try' }).inputValue();
    expect(await page.evaluate(() => (window as unknown as Handed).copied)).toEqual([link]);
    await page.evaluate(() => (document.execCommand = () => false));
    await copy.click();
    await expect(sheet(page).getByRole('status')).toHaveText('Hold the link to copy it.');
    expect(errors).toEqual([]);
  });

  test('tells a stranger what this is in one sentence, beside one picture', async ({ page }) => {
    await send(page);
    const link = await sheet(page).getByRole('textbox', { name: 'Link to this try' }).inputValue();
    // Another page, as whoever is sent it opens one.
    await page.goto('about:blank');
    await visit(page, link);
    await expect(page.getByText(/^Feltfoot shows what a jig does/)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Take the rod' })).toBeVisible();
    const pictures = page.locator('main').locator('svg:visible, canvas:visible');
    const isBig = (all: Element[]) =>
      all.filter((one) => one.getBoundingClientRect().height > 60).length;
    expect(await pictures.evaluateAll(isBig)).toBe(1);
    await page.getByText('The try you were sent').click();
    await expect(page.getByRole('button', { name: 'Replay', exact: true })).toBeVisible();
  });

  test('what came of one’s own try at it is there again after a reload, and beside the sent one', async ({
    page
  }) => {
    await send(page);
    const link = await sheet(page).getByRole('textbox', { name: 'Link to this try' }).inputValue();
    await page.goto('about:blank');
    await visit(page, link);
    await page.getByRole('button', { name: 'Take the rod' }).click();
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 12);
    const words = page.locator('dialog .result .words');
    await expect(words).toContainText('the jig');
    const said = await words.textContent();
    await page.reload();
    await expect(words).toHaveText(said ?? '');
    await page.goBack();
    await expect(page.locator('dialog[open]')).toHaveCount(0);
    await expect(page.getByText(/^You: \d+\./)).toBeVisible();
    await page.goForward();
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('slider', { name: /^Rod/ })).toBeFocused();
  });

  test('says in the result of one’s own what the sent one got, and leads on', async ({ page }) => {
    await send(page);
    const link = await sheet(page).getByRole('textbox', { name: 'Link to this try' }).inputValue();
    await page.goto('about:blank');
    await visit(page, link);
    await page.getByRole('button', { name: 'Take the rod' }).click();
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
    const result = page.getByRole('dialog').locator('.result');
    await expect(result.getByText(/The one you were sent got \d+\./)).toBeVisible();
    await result.getByRole('button', { name: 'Next: Lesson 1' }).click();
    await expect(page).toHaveURL(/\/lessons\/one-foot$/);
  });

  test('stands still and is usable with forced colors', async ({ page }) => {
    await page.emulateMedia({ forcedColors: 'active' });
    await send(page);
    await expect(sheet(page)).toBeVisible();
    expect([...(await longMotions(page)), ...(await longStyles(page))]).toEqual([]);
    expect(await faultsByDayAndNight(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(sheet(page)).toBeHidden();
    await expect(page.locator('.result')).toBeVisible();
  });
});
