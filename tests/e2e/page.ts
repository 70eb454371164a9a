import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { smallTargets } from './targets';

/** Goes there, until the page hears what is done on it: what is pressed before is lost. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator('main[data-awake]').waitFor();
}

/** As it is published for browsers: without its comments a page reads it in a fifth of the time. */
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * What axe finds wrong with a page, and controls that are too small for a finger. Ours have no frames: for
 * these alone axe would open, each time, a second page in which it puts together what it found in them.
 */
export async function faultsOf(page: Page, rules?: string[]) {
  // A page that was looked at before has it, read and compiled; the builder would bring it in twice.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  const builder = new AxeBuilder({ page, axeSource: ' ' });
  // All that it finds right would be told node by node, too: a third of its time.
  const axe = builder.setLegacyMode().options({ reporter: 'no-passes' });
  const { violations } = await (rules ? axe.withRules(rules) : axe).analyze();
  return [...violations, ...(await smallTargets(page))];
}

/** What light and width change: the rest of the rules sees the same by day and by night. */
const BY_NIGHT = ['color-contrast', 'target-size', 'scrollable-region-focusable'];
const WIDE = { width: 1280, height: 720 };

/** What axe finds by night on a wide window, in the rules that these change. The page is left as it was, by day. */
export async function faultsWideByNight(page: Page) {
  const before = page.viewportSize();
  await page.setViewportSize(WIDE);
  await page.emulateMedia({ colorScheme: 'dark' });
  const byNight = await faultsOf(page, BY_NIGHT);
  await page.emulateMedia({ colorScheme: 'light' });
  if (before) await page.setViewportSize(before);
  return byNight;
}

/**
 * A walk through many states of a page looks at them by day in `npm test`, and by night in `npm run test:long`: by
 * night colours are others, of the same names, and some pages and results are seen so in `npm test`.
 */
export const BY_DAY_OR_NIGHT = [
  { light: 'by day', also: [], faults: faultsOf },
  { light: 'by night on a wide window', also: ['@long'], faults: faultsWideByNight }
] as const;

/**
 * What axe finds on the page as it stands, by day, and then by night on a wide window: one walk to a place
 * shows it in both. The page is left as it was.
 */
export async function faultsByDayAndNight(page: Page) {
  await page.emulateMedia({ colorScheme: 'light' });
  const byDay = await faultsOf(page);
  return [...byDay, ...(await faultsWideByNight(page))];
}

/** By how much a page is wider than its window, CSS px: none, or it scrolls sideways. */
export function spillOf(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
}

/**
 * Words past the edge of the window, where no sideways scroll brings them back. The page's own width
 * does not tell: what lies past it is cut off.
 */
export function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrolls(element.parentElement));
    const isOut = ({ left, right, width }: DOMRect) =>
      width > 1 && (left < -1 || right > innerWidth + 1);
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const out: string[] = [];
    while (walker.nextNode()) {
      const { parentElement, textContent } = walker.currentNode;
      const isSeen =
        parentElement?.checkVisibility() &&
        !parentElement.closest('.out-of-sight, svg, #svelte-announcer');
      if (!isSeen || !textContent?.trim() || scrolls(parentElement)) continue;
      const range = document.createRange();
      range.selectNodeContents(walker.currentNode);
      if ([...range.getClientRects()].some(isOut)) out.push(textContent.trim());
    }
    return out;
  });
}

/** A narrow phone, which every page must do with. */
const NARROW = { width: 360, height: 740 };

/** Words cut off on a narrow phone with text at twice its size (WCAG 2.2, 1.4.4). The page is left as it was. */
export async function cutOffAtTwice(page: Page): Promise<string[]> {
  const before = page.viewportSize();
  await page.setViewportSize(NARROW);
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  const words = await cutOff(page);
  await page.evaluate(() => (document.documentElement.style.fontSize = ''));
  if (before) await page.setViewportSize(before);
  return words;
}

/** How many sheets it prints to, of letter and of A4. */
export async function sheetsOf(page: Page): Promise<number[]> {
  const sheets: number[] = [];
  for (const format of ['Letter', 'A4']) {
    const paper = (await page.pdf({ format })).toString('latin1');
    sheets.push(paper.match(/\/Type\s*\/Page\b/g)?.length ?? 0);
  }
  return sheets;
}
