import type { Locator, Page } from '@playwright/test';

/**
 * The most that pixels of pictures differ by (WCAG 2.2), in one picture any two of them, in two the same one.
 * Counted in the page: a million figures are dear to bring here.
 */
async function mostContrast(page: Page, ...pictures: Buffer[]): Promise<number> {
  return page.evaluate(
    async (texts) => {
      const luminancesOf = async (text: string) => {
        const bytes = Uint8Array.from(atob(text), (one) => one.charCodeAt(0));
        const picture = await createImageBitmap(new Blob([bytes]));
        const canvas = new OffscreenCanvas(picture.width, picture.height);
        const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
        context.drawImage(picture, 0, 0);
        const { data } = context.getImageData(0, 0, picture.width, picture.height);
        const linear = (value: number) =>
          value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
        return Array.from({ length: data.length / 4 }, (_, i) => {
          const [r, g, b] = [data[4 * i], data[4 * i + 1], data[4 * i + 2]].map(linear);
          return 0.2126 * r + 0.7152 * g + 0.0722 * b;
        });
      };
      const contrast = (one: number, other: number) =>
        (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
      const [one, other] = await Promise.all(texts.map(luminancesOf));
      const most = (all: number[]) => all.reduce((far, next) => Math.max(far, next), 0);
      const least = (all: number[]) => all.reduce((far, next) => Math.min(far, next), 1);
      if (!other) return contrast(most(one), least(one));
      if (one.length !== other.length) throw new Error('it has another size');
      return one.reduce((far, next, i) => Math.max(far, contrast(next, other[i])), 1);
    },
    pictures.map((png) => png.toString('base64'))
  );
}

/** A part of a place, as shares of its width and height. */
interface Part {
  x: number;
  y: number;
  width: number;
  height: number;
}
const WHOLE: Part = { x: 0, y: 0, width: 1, height: 1 };

async function shotOf(place: Locator, part: Part): Promise<Buffer> {
  if (part === WHOLE) return place.screenshot();
  await place.scrollIntoViewIfNeeded();
  const box = await place.boundingBox();
  if (!box) throw new Error('nothing to be seen there');
  const clip = {
    x: box.x + part.x * box.width,
    y: box.y + part.y * box.height,
    width: part.width * box.width,
    height: part.height * box.height
  };
  return place.page().screenshot({ clip });
}

/** The most that any two of its pixels differ by: a sign that has its ground’s colour has 1. */
export async function contrastWithin(place: Locator, part = WHOLE): Promise<number> {
  return mostContrast(place.page(), await shotOf(place, part));
}

/** A place with what stands around it, as far as a ring does, CSS px. */
async function around(place: Locator): Promise<Buffer> {
  await place.scrollIntoViewIfNeeded();
  const box = await place.boundingBox();
  if (!box) throw new Error('nothing to be seen there');
  const clip = { x: box.x - 8, y: box.y - 8, width: box.width + 16, height: box.height + 16 };
  return place.page().screenshot({ clip });
}

/** The most that any pixel of it or around it changes by what is done. */
export async function changeBy(place: Locator, act: () => Promise<unknown>): Promise<number> {
  const before = await around(place);
  await act();
  return mostContrast(place.page(), before, await around(place));
}
