import { expect, test, type Page } from '@playwright/test';
import { findChallenge, loadLessons } from '../../src/lib/course';
import type { Challenge } from '../../src/lib/scoring';
import { encodeRod } from '../../src/lib/wire';
import { turnByKey } from './hand';
import { tryBy } from './made-tries';
import { longMotions, longStyles } from './motions';
import { faultsByDayAndNight, visit } from './page';

/** The stubbed device: what its share sheet answers, and what it was handed. */
interface Device {
  /** An error by its name, or none. */
  answer: string | null;
  /** What its sheet takes; null is a device without one. */
  takes: 'files' | 'links' | null;
  shared: { text: string; url: string; files: string[] }[];
  copied: string[];
}
declare global {
  interface Window {
    device: Device;
  }
}

/** A device with a share sheet, and over plain http: there a page has no clipboard. */
async function withDevice(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const device: Device = { answer: null, takes: 'files', shared: [], copied: [] };
    window.device = device;
    navigator.canShare = (data) =>
      device.takes === 'files' || (device.takes === 'links' && !data?.files);
    navigator.share = ({ text = '', url = '', files = [] } = {}) => {
      device.shared.push({ text, url, files: files.map(({ name, type }) => `${name} ${type}`) });
      return device.answer
        ? Promise.reject(new DOMException('', device.answer))
        : Promise.resolve();
    };
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
    document.addEventListener('copy', () =>
      device.copied.push(String(document.getSelection() ?? ''))
    );
  });
}

/** From here on the device is so, and was handed nothing yet. */
const become = (page: Page, how: Partial<Device>) =>
  page.evaluate((how) => void Object.assign(window.device, how, { shared: [] }), how);
const shared = (page: Page) => page.evaluate(() => window.device.shared);
const sheet = (page: Page) => page.getByRole('dialog', { name: 'Send this try' });
const send = (page: Page) => page.getByRole('button', { name: 'Send it' }).click();
const linkOn = (page: Page) =>
  sheet(page).getByRole('textbox', { name: 'Link to this try' }).inputValue();

/** A try on the front page. */
async function makeTry(page: Page): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, '/');
  await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
  await expect(page.getByRole('button', { name: 'Send it' })).toBeVisible();
}

/** A link to a try that somebody else made, as the one from a result. */
function linkFrom(challenge: Challenge): string {
  const { elevation, azimuth } = encodeRod(tryBy([0.2, 0], challenge, 'sent').input);
  const parts = { c: challenge.id, e: `${elevation}`, a: `${azimuth}` };
  return `/try#${new URLSearchParams(parts)}`;
}
const SENT = linkFrom(findChallenge('exactly-one-foot', loadLessons()) as Challenge);

test.describe('what is sent of a try', { tag: '@narrow' }, () => {
  test('goes to the device’s share sheet, is offered on ours, copied, and opened by a stranger', async ({
    page
  }) => {
    const errors: string[] = [];
    page.on('pageerror', ({ message }) => errors.push(message));
    await withDevice(page);
    await makeTry(page);
    const before = await page.locator('figure.bottom').boundingBox();

    await test.step('it goes there, picture and link', async () => {
      await send(page);
      await expect.poll(() => shared(page)).toHaveLength(1);
      const [{ text, url, files }] = await shared(page);
      expect(text).toMatch(/^I wanted 1\sft\. The jig went .* Can you (beat it|do it, too)\?$/);
      expect(new URL(url).pathname).toBe('/try');
      expect(new URL(url).hash).toMatch(/^#c=exactly-one-foot&/);
      expect(files).toEqual(['feltfoot-try.png image/png']);
      await expect(sheet(page)).toHaveCount(0);
    });

    await test.step('without the picture where the sheet takes none', async () => {
      await become(page, { takes: 'links' });
      await send(page);
      await expect.poll(() => shared(page)).toMatchObject([{ files: [] }]);
    });

    await test.step('it is left alone when the sheet is put away, and can be sent again', async () => {
      await become(page, { takes: 'files', answer: 'AbortError' });
      await send(page);
      await expect.poll(() => shared(page)).toHaveLength(1);
      await expect(sheet(page)).toHaveCount(0);
      await send(page);
      await expect.poll(() => shared(page)).toHaveLength(2);
      await expect(sheet(page)).toHaveCount(0);
    });

    await test.step('it is offered on a sheet of ours where the device refuses', async () => {
      await become(page, { answer: 'NotAllowedError' });
      await send(page);
      await expect(sheet(page).getByRole('button', { name: 'Copy' })).toBeVisible();
      await expect(sheet(page).getByRole('img', { name: /^I wanted 1\sft\./ })).toBeVisible();
      // The test's server is this machine: whoever else is sent the link gets nowhere.
      await expect(sheet(page).getByText('This link works on this device only.')).toBeVisible();
      await expect(sheet(page).getByText(/^Anyone who opens/)).toHaveCount(0);
      await sheet(page).getByRole('button', { name: 'Share' }).click();
      await expect.poll(() => shared(page)).toHaveLength(2);
      await sheet(page).getByRole('button', { name: 'Close' }).click();
      await expect(sheet(page)).toBeHidden();
    });

    await test.step('it is copied over plain http, where a page has no clipboard, or held to be copied', async () => {
      await become(page, { takes: null });
      await send(page);
      const copy = sheet(page).getByRole('button', { name: 'Copy' });
      await expect(copy).toBeFocused();
      await copy.click();
      await expect(sheet(page).getByRole('status')).toHaveText('Copied.');
      expect(await page.evaluate(() => window.device.copied)).toEqual([await linkOn(page)]);
      await page.evaluate(() => (document.execCommand = () => false));
      await copy.click();
      await expect(sheet(page).getByRole('status')).toHaveText('Hold the link to copy it.');
    });

    await test.step('it tells a stranger what this is in one sentence, beside one picture', async () => {
      const link = await linkOn(page);
      const went = await page.locator('figure.bottom figcaption b').first().textContent();
      await sheet(page).getByRole('button', { name: 'Close' }).click();
      // What was sent lay over the water, which kept its size.
      expect(await page.locator('figure.bottom').boundingBox()).toEqual(before);
      // Another page, as whoever is sent it opens one.
      await page.goto('about:blank');
      await visit(page, link);
      await expect(page.getByText(/^Feltfoot shows what a jig does/)).toBeVisible();
      // What the link holds is exactly that try.
      await expect(
        page.getByText(new RegExp(`The jig went ${went}(, but .*)?\\. \\d+ of 100\\.`))
      ).toBeVisible();
      await expect(page.getByRole('button', { name: 'Take the rod' })).toBeVisible();
      const pictures = page.locator('main').locator('svg:visible, canvas:visible');
      const isBig = (all: Element[]) =>
        all.filter((one) => one.getBoundingClientRect().height > 60).length;
      expect(await pictures.evaluateAll(isBig)).toBe(1);
      await page.getByText('The try you were sent').click();
      await expect(page.getByRole('button', { name: 'Replay', exact: true })).toBeVisible();
    });
    expect(errors).toEqual([]);
  });

  test('of one’s own try at it the result says what the sent one got; it is there after a reload, stands beside the sent one, and leads on', async ({
    page
  }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await visit(page, SENT);
    await page.getByRole('button', { name: 'Take the rod' }).click();
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
    const result = page.getByRole('dialog').locator('.result');
    const words = result.locator('.words');
    await expect(result.getByText(/The one you were sent got \d+[.:,]/)).toBeVisible();
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
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
    await result.getByRole('button', { name: 'Next: Lesson 1' }).click();
    await expect(page).toHaveURL(/\/lessons\/one-foot$/);
  });

  test('stands still and is usable with forced colors', { tag: '@long' }, async ({ page }) => {
    await page.emulateMedia({ forcedColors: 'active' });
    await makeTry(page);
    await send(page);
    await expect(sheet(page)).toBeVisible();
    expect([...(await longMotions(page)), ...(await longStyles(page))]).toEqual([]);
    expect(await faultsByDayAndNight(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(sheet(page)).toBeHidden();
    await expect(page.locator('.result')).toBeVisible();
  });
});
