import { mkdtempSync, rmSync, truncateSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright';
import { ensureBuilt } from '../scripts/build.mjs';
import { findChromium } from '../scripts/chromium.mjs';
import { loadHandler, serve } from '../server/serve.mjs';
import { FIRST_PLACE, makeLongClip } from './film/long-clip';
import { mostHeld } from './film/memory';
import { processorSeconds } from './film/processor';
import type { Metrics } from './metric';

const BUNDLE = 'node_modules/mediabunny/dist/bundles/mediabunny.min.cjs';
const MINUTE = { width_px: 1920, height_px: 1080, rate_Hz: 30, seconds: 60, bitrate: 12e6 };
/** A phone's ten minutes of 4K; all but a minute of it holes that the disk does not keep. */
const HUGE_BYTES = 3e9;
const MOST_MB = 400;
/** Decoding and following 1,800 frames, on a machine that is busy. */
const PATIENCE_MS = 900_000;

/** A minute of 1080p is opened, stepped through and followed to its end in the real page. */
export async function filmMetrics(): Promise<Metrics> {
  const executablePath = await findChromium();
  const handler = await loadHandler(resolve(await ensureBuilt()));
  const { port, stop } = await serve({ handler, port: 0, host: '127.0.0.1' });
  const launch = () => chromium.launch({ executablePath, args: ['--no-sandbox'] });
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-film-'));
  try {
    const file = join(folder, 'minute.webm');
    const maker = await launch();
    await madeIn(maker, `http://localhost:${port}/made-clip`, file);
    // What making it took does not count.
    await maker.close();
    const browser = await launch();
    const followed = await followedIn(browser, `http://localhost:${port}`, file);
    truncateSync(file, HUGE_BYTES);
    const huge = await openedIn(browser, `http://localhost:${port}`, file);
    await browser.close();
    return { ...followed, ...huge };
  } finally {
    await stop();
    rmSync(folder, { recursive: true });
  }
}

/** On a page of its own, which has no content policy; encoders want a secure context. */
async function madeIn(browser: Browser, address: string, file: string): Promise<void> {
  const page = await browser.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  await page.route(address, (route) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>made</title>' })
  );
  await page.goto(address);
  await page.addScriptTag({ path: BUNDLE });
  const [clip] = await Promise.all([page.waitForEvent('download'), makeLongClip(page, MINUTE)]);
  await clip.saveAs(file);
  await page.close();
}

async function pageWith(browser: Browser, address: string, file: string): Promise<Page> {
  const page = await browser.newPage({ serviceWorkers: 'block' });
  page.setDefaultTimeout(PATIENCE_MS);
  await page.goto(`${address}/film`);
  await page.locator('main[data-awake]').waitFor();
  await page.getByLabel('Choose a clip').setInputFiles(file);
  await page.getByText(/frame 1 of /).waitFor();
  return page;
}

async function followedIn(browser: Browser, address: string, file: string): Promise<Metrics> {
  let seconds = 0;
  let processor_s = 0;
  const most = await mostHeld(browser, async () => {
    const page = await pageWith(browser, address, file);
    await page.getByRole('radio', { name: 'Jig' }).check({ force: true });
    const box = await page.getByRole('application').boundingBox();
    if (!box) throw new Error('the clip is not shown');
    const { x, y } = FIRST_PLACE;
    await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
    await page.getByRole('button', { name: 'Mark jig' }).click();
    const from = performance.now();
    const before_s = await processorSeconds(browser);
    await page.getByRole('button', { name: 'Follow from here' }).click();
    await page.getByText('Followed to the end of the clip.').waitFor();
    seconds = (performance.now() - from) / 1000;
    processor_s = (await processorSeconds(browser)) - before_s;
    await page.close();
  });
  return {
    'film.memory': { value: most, unit: 'MB, a minute of 1080p', target: { atMost: MOST_MB } },
    'film.follow_cpu': {
      value: (1000 * processor_s) / (MINUTE.rate_Hz * MINUTE.seconds),
      ...{ unit: 'CPU ms a frame, 1080p', target: null }
    },
    'film.follow': { value: seconds, unit: 's for 1,800 frames', target: null }
  };
}

async function openedIn(browser: Browser, address: string, file: string): Promise<Metrics> {
  const most = await mostHeld(browser, async () => {
    await (await pageWith(browser, address, file)).close();
  });
  return { 'film.memory_huge': { value: most, unit: 'MB, 3 GB', target: { atMost: MOST_MB } } };
}
