import { loadavg } from 'node:os';
import type { Browser, CDPSession, Page } from 'playwright';
import { GROUND_KINDS } from '../src/lib/model';
import { percentile, type Metrics } from './metric';
import { callCosts, DESKTOP, open, pageOn, PHONE, SHARP_PHONE } from './sandbox/browser';

/**
 * Practice water in a real Chromium: what a frame costs, how often a slow machine keeps 60 a second,
 * and whether ten minutes of tries leave memory behind. Without a graphics card the browser paints
 * with the processor: a machine with one is faster. Costs are processor time of the page's thread,
 * painting included, so other programs do not count; frames are by the clock, and there they do: the
 * load of the machine stands beside them.
 */
const LIVE_S = 6;
const SLOWED = 4;
/** Of so many slowed rounds the best counts: other programs can only delay a frame. */
const ROUNDS = 3;
/** A frame may be this late and still be one of 60 a second, ms. */
const IN_TIME_MS = 17.5;
/** So many of a hundred frames: a late one now and then is not seen. */
const IN_TIME_PERCENT = 95;
const FRAMES = 36_000;
const MINUTES = 10;
const MB = 1e6;

const cost = (value: number, most: number | null, unit: string) => ({
  value,
  unit,
  target: most === null ? null : { atMost: most }
});

/** Gravel asks most of both: stones for the model, loose pebbles for the scenery. */
const live = (page: Page, isFlushed: boolean) =>
  page.evaluate(([seconds, flushed]) => window.bench.live('gravel', seconds, flushed), [
    LIVE_S,
    isFlushed
  ] as const);

async function perFrame(browser: Browser, name: string, page: Page): Promise<Metrics> {
  const costs = await callCosts(browser, page, () => live(page, true));
  const p95 = (called: string) => percentile(costs.get(called) ?? [NaN], 0.95);
  return {
    [`sandbox.model_p95.${name}`]: cost(p95('stepFrame'), 2, 'CPU ms a frame'),
    [`sandbox.drawing_p95.${name}`]: cost(p95('drawFrame'), 6, 'CPU ms a frame, no GPU')
  };
}

async function slowed(name: string, openPage: () => Promise<Page>): Promise<Metrics> {
  let median = Infinity;
  let inTime = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const page = await openPage();
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    const frame_ms = await live(page, false);
    await page.close();
    median = Math.min(median, percentile(frame_ms, 0.5));
    inTime = Math.max(inTime, frame_ms.filter((ms) => ms <= IN_TIME_MS).length / frame_ms.length);
  }
  return {
    [`sandbox.slowed_frame.${name}`]: cost(median, IN_TIME_MS, `ms, ${SLOWED}× slower, no GPU`),
    [`sandbox.slowed_in_time.${name}`]: {
      value: 100 * inTime,
      unit: `% ≤ ${IN_TIME_MS} ms, no GPU`,
      target: { atLeast: IN_TIME_PERCENT }
    }
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
  // One minute of differing bottoms first: what is made once is no growth.
  await run(FRAMES / MINUTES);
  const start = await heapMb(session);
  await run(FRAMES);
  const end = await heapMb(session);
  return {
    'sandbox.heap_start': cost(start, null, 'MB'),
    'sandbox.heap_end': cost(end, null, 'MB after ten minutes'),
    // A tenth of a megabyte a minute fills nothing in a day on the water.
    'sandbox.heap_growth': cost((end - start) / MINUTES, 0.1, 'MB a minute')
  };
}

async function measured(browser: Browser, code: string): Promise<Metrics> {
  const metrics: Metrics = {};
  const screens = { desktop: DESKTOP, phone: PHONE, sharp_phone: SHARP_PHONE };
  for (const [name, screen] of Object.entries(screens)) {
    const openPage = () => pageOn(browser, code, screen);
    Object.assign(metrics, await perFrame(browser, name, await openPage()));
    Object.assign(metrics, await slowed(name, openPage));
  }
  metrics['sandbox.load'] = cost(loadavg()[0], null, 'programs running meanwhile');
  return { ...metrics, ...(await tenMinutes(await pageOn(browser, code, PHONE))) };
}

export async function sandboxMetrics(): Promise<Metrics> {
  const opened = await open();
  if (!opened) {
    console.error('NO CHROMIUM: the sandbox was not measured. FELTFOOT_CHROMIUM names one.');
    return {};
  }
  try {
    return await measured(opened.browser, opened.code);
  } finally {
    await opened.browser.close();
  }
}
