import type { Page } from '@playwright/test';

/** A clip of a jig before a wall, made by the browser's own encoder. */
export interface MadeClip {
  readonly width_px: number;
  readonly height_px: number;
  /** Time of each frame, s. */
  readonly stamps_s: readonly number[];
  /** Where the jig is in each, pixels. */
  readonly places: readonly (readonly [number, number])[];
  readonly format: 'webm' | 'mp4';
}

const BUNDLE = 'node_modules/mediabunny/dist/bundles/mediabunny.min.cjs';

/** Encodes it on a page of its own, which has no content policy. */
export async function makeClip(page: Page, clip: MadeClip): Promise<Buffer> {
  const address = `${process.env.FELTFOOT_E2E_URL}/made-clip`;
  await page.route(address, (route) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>made</title>' })
  );
  await page.goto(address);
  await page.addScriptTag({ path: BUNDLE });
  return Buffer.from(await page.evaluate(encode, clip), 'base64');
}

/** Runs in the page. */
async function encode({ width_px, height_px, stamps_s, places, format }: MadeClip) {
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  const bunny = (globalThis as any).Mediabunny;
  const canvas = new OffscreenCanvas(width_px, height_px);
  const context = canvas.getContext('2d')!;
  const wall = new OffscreenCanvas(width_px, height_px);
  const paint = wall.getContext('2d')!;
  let state = 7;
  const random = () => (state = (state * 16807) % 2147483647) / 2147483647;
  for (let i = 0; i < 900; i++) {
    const shade = 80 + 70 * random();
    paint.fillStyle = `rgb(${shade} ${shade + 10} ${shade + 4})`;
    const side = (0.02 + 0.1 * random()) * width_px;
    paint.fillRect(random() * width_px - side / 2, random() * height_px - side / 2, side, side);
  }
  const output = new bunny.Output({
    format: format === 'mp4' ? new bunny.Mp4OutputFormat() : new bunny.WebMOutputFormat(),
    target: new bunny.BufferTarget()
  });
  const source = new bunny.CanvasSource(canvas, {
    codec: format === 'mp4' ? 'vp9' : 'vp8',
    bitrate: 8 * width_px * height_px,
    keyFrameInterval: 1
  });
  output.addVideoTrack(source);
  await output.start();
  for (let i = 0; i < stamps_s.length; i++) {
    const [x, y] = places[i];
    context.drawImage(wall, 0, 0);
    for (const [dx, dy, r, colour] of [
      [0, 0, 12, '#201810'],
      [-4, 2, 5, '#f4efe0'],
      [5, -4, 3, '#d05020'],
      [4, 6, 2, '#e0d8c0']
    ] as const) {
      context.fillStyle = colour;
      context.beginPath();
      context.arc(x + dx, y + dy, r, 0, 7);
      context.fill();
    }
    await source.add(stamps_s[i], (stamps_s[i + 1] ?? stamps_s[i] + 1 / 30) - stamps_s[i]);
  }
  source.close();
  await output.finalize();
  let text = '';
  const bytes = new Uint8Array(output.target.buffer);
  for (let at = 0; at < bytes.length; at += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  }
  return btoa(text);
}
