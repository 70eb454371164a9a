import type { Locator, Page } from '@playwright/test';

/** Relative luminances of a picture’s pixels, row by row (WCAG 2.2). */
async function luminances(page: Page, png: Buffer): Promise<number[]> {
  return page.evaluate(
    async (text) => {
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
    },
    // As one text: of a list, each byte would be wrapped up by itself.
    png.toString('base64')
  );
}

const contrast = (one: number, other: number) =>
  (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);

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
  const seen = await luminances(place.page(), await shotOf(place, part));
  return contrast(
    seen.reduce((most, one) => Math.max(most, one), 0),
    seen.reduce((least, one) => Math.min(least, one), 1)
  );
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
  const before = await luminances(place.page(), await around(place));
  await act();
  const after = await luminances(place.page(), await around(place));
  if (before.length !== after.length) throw new Error('it has another size');
  return before.reduce((most, one, i) => Math.max(most, contrast(one, after[i])), 1);
}
