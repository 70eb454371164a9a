import type { Page } from '@playwright/test';

interface Watched {
  saidOverTime?: Record<string, string[]>;
}

/**
 * From the next page on, keeps what stands at each place of it, whenever that is another.
 * @param places selectors by name
 * @returns what stood there so far
 */
export async function keepSaid(
  page: Page,
  places: Record<string, string>
): Promise<() => Promise<Record<string, string[]>>> {
  await page.addInitScript((entries) => {
    const said: Record<string, string[]> = {};
    (window as Watched).saidOverTime = said;
    const look = () => {
      for (const [name, place] of entries) {
        const words = document.querySelector(place)?.textContent.trim();
        const list = (said[name] ??= []);
        if (words && words !== list.at(-1)) list.push(words);
      }
      requestAnimationFrame(look);
    };
    look();
  }, Object.entries(places));
  return () => page.evaluate(() => (window as Watched).saidOverTime ?? {});
}
