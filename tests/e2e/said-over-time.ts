import type { Page } from '@playwright/test';

/**
 * From the next page on, keeps what stands at each place of it, whenever that is another.
 * @param places selectors by name
 * @returns what stood there so far
 */
export async function keepSaid<Name extends string>(
  page: Page,
  places: Record<Name, string>
): Promise<() => Promise<Record<Name, string[]>>> {
  await page.addInitScript((places: Record<string, string>) => {
    const said: Record<string, string[]> = {};
    (window as { said?: typeof said }).said = said;
    const look = () => {
      for (const [name, place] of Object.entries(places)) {
        const words = document.querySelector(place)?.textContent.trim();
        const list = (said[name] ??= []);
        if (words && words !== list.at(-1)) list.push(words);
      }
      requestAnimationFrame(look);
    };
    look();
  }, places);
  return () => page.evaluate(() => (window as { said?: object }).said as Record<Name, string[]>);
}
