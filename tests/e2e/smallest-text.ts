import { expect, type Page } from '@playwright/test';

/** Read from ten metres: no text is lower than this share of the screen's height. The issue's own figure. */
const LEAST_SHARE = 1 / 40;
/** Screens that clubs have: most projectors, and most televisions. */
const SIZES = [
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 }
];

/** Texts of the page that are lower than so much, with their share of it. */
function tooSmall(page: Page, least_px: number): Promise<string[]> {
  return page.evaluate((least_px) => {
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const small: string[] = [];
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const place = node.parentElement;
      const said = node.textContent?.trim() ?? '';
      if (!place || said === '' || !place.checkVisibility({ visibilityProperty: true })) continue;
      if (place.closest('.out-of-sight, #svelte-announcer, details:not([open]) > :not(summary)'))
        continue;
      const drawn = place instanceof SVGGraphicsElement ? (place.getScreenCTM()?.a ?? 1) : 1;
      const px = parseFloat(getComputedStyle(place).fontSize) * drawn * place.currentCSSZoom;
      if (px < least_px) small.push(`${(px / least_px).toFixed(2)} ${said.slice(0, 40)}`);
    }
    return small;
  }, least_px);
}

/** Read at arm’s length in a boat: 9 pt, in CSS px. By hand, from sheets on a moving deck. */
const LEAST_PRINT_PX = 12;
/** What A4 has between the margins of all pages, CSS px: drawings are scaled to it. */
const A4_WIDE_PX = 680;

/** Nothing that goes on paper is too small. The page is left as it was. */
export async function expectPrintReadable(page: Page, sheet: string): Promise<void> {
  const before = page.viewportSize();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: A4_WIDE_PX, height: 960 });
  expect(await tooSmall(page, LEAST_PRINT_PX), sheet).toEqual([]);
  await page.emulateMedia({ media: null });
  if (before) await page.setViewportSize(before);
}

/** The screen is the room's: nothing on it is too small, on either size. What is drawn on a canvas grows by `--enlarged`. */
export async function expectReadable(page: Page, state: string): Promise<void> {
  const before = page.viewportSize();
  await page.getByRole('button', { name: 'Hide the controls' }).click();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    expect(
      await tooSmall(page, size.height * LEAST_SHARE),
      `${state}, ${size.height} px high`
    ).toEqual([]);
    const drawn = page.locator('.plate').first();
    if (await drawn.isVisible()) {
      const enlarged = await drawn.evaluate((plate) =>
        Number(getComputedStyle(plate).getPropertyValue('--enlarged'))
      );
      // The smallest figure of a picture has 12 px (src/lib/sandbox/draw).
      expect(12 * enlarged, `picture: ${state}`).toBeGreaterThanOrEqual(size.height * LEAST_SHARE);
    }
  }
  await page.getByRole('button', { name: 'Show the controls' }).click();
  if (before) await page.setViewportSize(before);
}
