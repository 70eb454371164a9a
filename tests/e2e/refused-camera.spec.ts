import { chromium, expect, test, type Page } from '@playwright/test';
import { turnByKey } from './hand';
import { faultsOf, visit } from './page';

/** Why there is no camera, by what the browser is told, and what the page then says to do. */
const REFUSALS = [
  {
    why: 'is refused',
    args: [],
    // The browser of these tests has no window to ask in.
    error: 'NotAllowedError',
    says: 'The camera is blocked. Allow it for this page and try again.'
  },
  {
    why: 'is missing',
    // Whoever is asked allows it, and there is none.
    args: ['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream=device-count=0'],
    says: 'No camera found. Plug one in and try again, or move the rod on the screen.'
  },
  {
    why: 'is in use',
    args: [],
    // No browser can be made to say so by settings.
    error: 'NotReadableError',
    says: 'Another program is using the camera. Close it and try again.'
  }
];

async function refuse(page: Page, name: string): Promise<void> {
  await page.addInitScript((name) => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', name));
  }, name);
}

for (const { why, args, error, says } of REFUSALS) {
  test(
    `where the camera ${why}, the page says what to do, and the rod moves without`,
    { tag: '@any-width' },
    async ({ baseURL }) => {
      const browser = await chromium.launch({
        executablePath: process.env.FELTFOOT_CHROMIUM || undefined,
        args: ['--no-sandbox', ...args]
      });
      const page = await browser.newPage({ baseURL, reducedMotion: 'reduce' });
      if (error) await refuse(page, error);
      await visit(page, '/water');
      await page.getByRole('button', { name: 'Take the rod' }).click();
      await page.getByText('More', { exact: true }).click();
      await page.getByText('Your own rod, on camera').click();
      await page.getByRole('button', { name: 'Camera on' }).click();
      await expect(page.getByRole('status').filter({ hasText: says })).toBeVisible();
      expect(await faultsOf(page)).toEqual([]);
      await expect(page.getByRole('button', { name: 'Camera on' })).toBeEnabled();
      await page.getByText('More', { exact: true }).click();
      await turnByKey(page.getByRole('slider', { name: /^Rod/ }), 8);
      await expect(page.locator('[data-phase="showing"]')).toBeVisible();
      await browser.close();
    }
  );
}
