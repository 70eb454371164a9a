import { chromium, expect, type Page } from '@playwright/test';
import { closeSync, openSync, writeSync } from 'node:fs';

const WIDTH = 320;
const HEIGHT = 180;
const RATE_Hz = 20;
/** Orange tape, and a wall that has no colour (ITU-R BT.601). */
const TAPE = { y: 150, cb: 60, cr: 200 };
const TAPE_RADIUS_PX = 5;

/** Where the rod points at a time, degrees from the bait. */
export type RodAngle = (t_s: number) => number;

/** Seen from 45°, five rod lengths of two off: where the tip is across the picture, pixels of 320. */
export function tipAcross_px(azimuth_deg: number): number {
  const a = ((azimuth_deg - 45) * Math.PI) / 180;
  return 160 + (240 * Math.sin(a)) / (2.5 - Math.cos(a));
}

/** A page of a browser of its own, whose camera shows what this file holds. */
export async function pageBefore(camera: string, baseURL: string | undefined): Promise<Page> {
  const browser = await chromium.launch({
    executablePath: process.env.FELTFOOT_CHROMIUM || undefined,
    args: [
      '--no-sandbox',
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${camera}`
    ]
  });
  // A certificate that nobody vouches for is warned of once: whoever goes on is past it.
  return browser.newPage({ baseURL, ignoreHTTPSErrors: true });
}

/**
 * Puts the rod before the camera, which then shows the clip from its beginning, and taps its tape.
 * @param patience for how long the clip may be watched until that is seen
 */
export async function cameraOn(page: Page, patience?: { timeout: number }): Promise<void> {
  await page.getByRole('button', { name: 'Take the rod' }).first().click();
  await page.getByText('More', { exact: true }).click();
  await page.getByText('Your own rod, on camera').click();
  await page.getByRole('button', { name: 'Camera on' }).click();
  const picture = page.getByRole('button', { name: /^Tap the tape/ });
  await expect(page.getByText('Tap the tape.', { exact: true })).toBeVisible();
  await expect.poll(() => picture.evaluate((box) => box.clientHeight)).toBeGreaterThan(60);
  const box = (await picture.boundingBox())!;
  await picture.click({
    position: { x: (tipAcross_px(0) / WIDTH) * box.width, y: box.height / 2 }
  });
  await expect(page.getByText('Tip over the 30° mark, and still.')).toBeVisible(patience);
}

/** Writes what a camera sees as a Y4M file that Chromium plays in place of one. */
export function writeCamera(path: string, seconds: number, rod: RodAngle): void {
  const file = openSync(path, 'w');
  writeSync(file, `YUV4MPEG2 W${WIDTH} H${HEIGHT} F${RATE_Hz}:1 Ip A1:1 C420jpeg\n`);
  const wall = Buffer.alloc(WIDTH * HEIGHT * 1.5, 128);
  for (let i = 0; i < WIDTH * HEIGHT; i++) {
    wall[i] = 90 + ((i * 37) % 41) + (Math.floor(i / WIDTH / 20) % 2) * 20;
  }
  for (let frame = 0; frame < seconds * RATE_Hz; frame++) {
    const picture = Buffer.from(wall);
    paintTape(picture, tipAcross_px(rod(frame / RATE_Hz)), 90);
    writeSync(file, 'FRAME\n');
    writeSync(file, picture);
  }
  closeSync(file);
}

function paintTape(picture: Buffer, x: number, y: number): void {
  const cover = (away: number) => Math.min(Math.max(TAPE_RADIUS_PX + 0.5 - away, 0), 1);
  const mix = (at: number, value: number, share: number) =>
    (picture[at] = Math.round(picture[at] + share * (value - picture[at])));
  for (let row = 0; row < HEIGHT; row++) {
    for (let column = 0; column < WIDTH; column++) {
      const share = cover(Math.hypot(column - x, row - y));
      if (share > 0) mix(row * WIDTH + column, TAPE.y, share);
    }
  }
  const chroma = WIDTH * HEIGHT;
  for (let row = 0; row < HEIGHT / 2; row++) {
    for (let column = 0; column < WIDTH / 2; column++) {
      const share = cover(Math.hypot(2 * column + 0.5 - x, 2 * row + 0.5 - y));
      if (share === 0) continue;
      mix(chroma + (row * WIDTH) / 2 + column, TAPE.cb, share);
      mix(chroma * 1.25 + (row * WIDTH) / 2 + column, TAPE.cr, share);
    }
  }
}

/** Holds and moves one after the other: degrees, and the time to come there and to stay, s. */
export function posesOf(
  steps: readonly { to_deg: number; in_s: number; hold_s: number }[]
): RodAngle {
  return (t_s) => {
    let begun_s = 0;
    let from_deg = 0;
    for (const { to_deg, in_s, hold_s } of steps) {
      const u = in_s === 0 ? 1 : Math.min(Math.max((t_s - begun_s) / in_s, 0), 1);
      if (t_s < begun_s + in_s + hold_s) {
        return from_deg + (to_deg - from_deg) * u * u * u * (10 + u * (6 * u - 15));
      }
      begun_s += in_s + hold_s;
      from_deg = to_deg;
    }
    return from_deg;
  };
}
