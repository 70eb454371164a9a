import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Goes there, until the page hears what is done on it: what is pressed before is lost. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.locator('main[data-awake]').waitFor();
}

/**
 * What axe finds wrong with a page. Ours have no frames: for these alone axe would open, each time, a
 * second page in which it puts together what it found in them.
 */
export async function faultsOf(page: Page, rules?: string[]) {
  const axe = new AxeBuilder({ page }).setLegacyMode();
  return (await (rules ? axe.withRules(rules) : axe).analyze()).violations;
}

/** By how much a page is wider than its window, CSS px: none, or it scrolls sideways. */
export function spillOf(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
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
