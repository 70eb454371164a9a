import { chromium, expect, test } from '@playwright/test';
import { turnByKey } from './hand';
import { faultsOf, visit } from './page';

/** What the page says to do where there is no camera, by what the browser tells it. */
const REFUSALS = [
  // The browser of these tests has no window to ask in.
  ['NotAllowedError', 'The camera is blocked. Allow it for this page and try again.'],
  // No browser can be made to say so by settings.
  ['NotReadableError', 'Another program is using the camera. Close it and try again.']
] as const;
const MISSING = 'No camera found. Plug one in and try again, or move the rod on the screen.';

test(
  'where the camera is missing, refused or in use, the page says what to do, and the rod moves without',
  { tag: '@any-width' },
  async ({ baseURL }) => {
    const browser = await chromium.launch({
      executablePath: process.env.FELTFOOT_CHROMIUM || undefined,
      // Whoever is asked allows it, and there is none.
      args: [
        '--no-sandbox',
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream=device-count=0'
      ]
    });
    const page = await browser.newPage({ baseURL, reducedMotion: 'reduce' });
    await visit(page, '/water');
    await page.getByRole('button', { name: 'Take the rod' }).click();
    await page.getByText('More', { exact: true }).click();
    await page.getByText('Your own rod, on camera').click();
    const ask = page.getByRole('button', { name: 'Camera on' });
    const says = (words: string) => page.getByRole('status').filter({ hasText: words });
    await ask.click();
    await expect(says(MISSING)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    for (const [error, words] of REFUSALS) {
      await page.evaluate((name) => {
        navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', name));
      }, error);
      await ask.click();
      await expect(says(words)).toBeVisible();
    }
    expect(await faultsOf(page)).toEqual([]);
    await expect(ask).toBeEnabled();
    await page.getByText('More', { exact: true }).click();
    await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
    await expect(page.locator('[data-phase="showing"]')).toBeVisible();
    await browser.close();
  }
);
