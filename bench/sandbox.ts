import { GROUND_KINDS } from '../src/lib/model';
import { DESKTOP, open, pageOn, PHONE, type Screen } from './sandbox/browser';
import type { Costs } from './sandbox/page';
import { percentile, type Metrics } from './metric';
import type { Browser, CDPSession, Page } from 'playwright';

/**
 * Practice water in a real Chromium: what a frame costs, how often a slow machine keeps 60 a second,
 * and whether ten minutes of tries leave memory behind. Without a graphics card the browser paints
 * with the processor, on the same cores that the model runs on: a machine with one is faster.
 */
const LIVE_S = 8;
const SLOWED = 4;
/** A frame may be this late and still be one of 60 a second, ms. */
const IN_TIME_MS = 17.5;
const FRAMES = 36_000;
const MINUTES = 10;
const MB = 1e6;

const cost = (value: number, most: number | null, unit: string) => ({
  value,
  unit,
  target: most === null ? null : { atMost: most }
});

async function live(browser: Browser, code: string, screen: Screen, isFlushed: boolean, slow = 1) {
  const page = await pageOn(browser, code, screen);
  const session = await page.context().newCDPSession(page);
  if (slow > 1) await session.send('Emulation.setCPUThrottlingRate', { rate: slow });
  const costs = await page.evaluate(
    ([seconds, flushed]) => window.bench.live('gravel', seconds as number, flushed as boolean),
    [LIVE_S, isFlushed]
  );
  await page.close();
  return costs;
}

function perFrame(name: string, { model_ms, drawing_ms }: Costs): Metrics {
  return {
    [`sandbox.model_p95.${name}`]: cost(percentile(model_ms, 0.95), 2, 'ms a frame'),
    [`sandbox.drawing_p95.${name}`]: cost(percentile(drawing_ms, 0.95), 6, 'ms a frame, no GPU')
  };
}

function slowed(name: string, { frame_ms }: Costs): Metrics {
  const inTime = frame_ms.filter((ms) => ms <= IN_TIME_MS).length / frame_ms.length;
  const unit = `at a ${SLOWED}th of the speed, no GPU`;
  return {
    [`sandbox.slowed_frame.${name}`]: cost(percentile(frame_ms, 0.5), IN_TIME_MS, `ms ${unit}`),
    [`sandbox.slowed_in_time.${name}`]: { value: 100 * inTime, unit: `% ${unit}`, target: null }
  };
}

async function heapMb(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return usedSize / MB;
}

async function tenMinutes(page: Page): Promise<Metrics> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.enable');
  const run = (frames: number) =>
    page.evaluate(([kinds, n]) => window.bench.many(kinds, n), [GROUND_KINDS, frames] as const);
  // One round of all bottoms first: what is made once is no growth.
  await run(FRAMES / MINUTES);
  const start = await heapMb(session);
  await run(FRAMES);
  const end = await heapMb(session);
  return {
    'sandbox.heap_start': cost(start, null, 'MB'),
    'sandbox.heap_end': cost(end, null, 'MB after ten minutes'),
    // Less than a tenth of a megabyte a minute would fill nothing in a day on the water.
    'sandbox.heap_growth': cost((end - start) / MINUTES, 0.1, 'MB a minute')
  };
}

export async function sandboxMetrics(): Promise<Metrics> {
  const opened = await open();
  if (!opened) {
    console.error('NO CHROMIUM: the sandbox was not measured. FELTFOOT_CHROMIUM names one.');
    return {};
  }
  const { browser, code } = opened;
  try {
    const metrics: Metrics = {};
    for (const [name, screen] of Object.entries({ desktop: DESKTOP, phone: PHONE })) {
      Object.assign(metrics, perFrame(name, await live(browser, code, screen, true)));
      Object.assign(metrics, slowed(name, await live(browser, code, screen, false, SLOWED)));
    }
    Object.assign(metrics, await tenMinutes(await pageOn(browser, code, PHONE)));
    return metrics;
  } finally {
    await browser.close();
  }
}
