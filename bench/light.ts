import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright';
import { ensureBuilt } from '../scripts/build.mjs';
import { findChromium } from '../scripts/chromium.mjs';
import { loadHandler, serve } from '../server/serve.mjs';
import type { Metric, Metrics } from './metric';

/**
 * Each kind of page, opened cold as a cheap phone far from a mast would: bytes as sent, how long the
 * thread is blocked, what moves, and how long the main button takes. Bytes and shifts are exact on a
 * busy machine; times are by the clock, and there other programs count.
 */
const PAGES = {
  home: '/',
  lessons: '/lessons',
  lesson: '/lessons/one-foot',
  water: '/water',
  try: '/try',
  quiz: '/quiz',
  ruler: '/ruler',
  compare: '/compare',
  explore: '/explore',
  film: '/film',
  record: '/record',
  homework: '/homework',
  guide: '/guide',
  clinic: '/clinic',
  about: '/about'
};
const SCREEN = { width: 390, height: 844 };
const SLOWED = 4;
const MBIT = 1e6 / 8;
const NETWORK = {
  offline: false,
  latency: 100,
  downloadThroughput: 9 * MBIT,
  uploadThroughput: 3 * MBIT
};
/** A page left alone for so long has fetched what it fetches by itself, and has stopped moving, ms. */
const SETTLED_MS = 4000;

interface Seen {
  lcp_ms: number;
  shifts: number;
  blocked_ms: number;
  inp_ms: number;
  /** When scripts had taken the page over. */
  alive_ms: number;
}
declare global {
  interface Window {
    seen: Seen;
  }
}

/** Said by a page when scripts have taken it over. */
const ALIVE = 'The page is alive.';

/** Runs in the page before anything of it: as text, since a compiled function brings helpers that are not there. */
const WATCH = `
  const seen = (window.seen = { lcp_ms: 0, shifts: 0, blocked_ms: 0, inp_ms: 0, alive_ms: 0 });
  const observe = (type, each, more = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(each)).observe({ type, buffered: true, ...more });
  observe('largest-contentful-paint', ({ startTime }) => (seen.lcp_ms = startTime));
  observe('layout-shift', ({ value, hadRecentInput }) => (seen.shifts += hadRecentInput ? 0 : value));
  // What a task takes above this is felt (web.dev, "Total Blocking Time").
  observe('longtask', ({ duration }) => (seen.blocked_ms += duration - 50));
  observe('event', ({ duration }) => (seen.inp_ms = Math.max(seen.inp_ms, duration)), { durationThreshold: 16 });
  new MutationObserver(() => {
    if (seen.alive_ms || !document.querySelector('main[data-awake]')) return;
    seen.alive_ms = performance.now();
    console.debug('${ALIVE}');
  }).observe(document, { subtree: true, childList: true, attributes: true });
`;

/**
 * Presses what the page is for, or else what folds open in it, or the bar's own menu; never what another
 * page has, which would go there. Tells whether there was anything: what was not pressed was not measured.
 */
async function pressed(page: Page): Promise<boolean> {
  const ways = ['main button.main', 'main summary', 'main button', 'header button, header summary'];
  for (const way of ways) {
    const [one] = await page.locator(way).filter({ visible: true }).all();
    if (!one || (await one.isDisabled())) continue;
    await one.click({ noWaitAfter: true });
    return true;
  }
  return false;
}

/** What came until the page was alive, and in all: bodies as sent, KiB. */
const fetched = (page: Page) =>
  page.evaluate(() => {
    const entries = [
      ...performance.getEntriesByType('navigation'),
      ...performance.getEntriesByType('resource')
    ] as PerformanceResourceTiming[];
    const sums = { script: 0, font: 0, first: 0, all: 0 };
    for (const { name, responseEnd, encodedBodySize } of entries) {
      const isFirst = responseEnd <= window.seen.alive_ms;
      sums.all += encodedBodySize / 1024;
      if (isFirst) sums.first += encodedBodySize / 1024;
      if (isFirst && name.endsWith('.js')) sums.script += encodedBodySize / 1024;
      if (name.endsWith('.woff2')) sums.font += encodedBodySize / 1024;
    }
    return sums;
  });

async function slowed(page: Page) {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', NETWORK);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await session.send('Performance.enable');
  return session;
}

const atMost = (value: number, most: number | null, unit: string): Metric => ({
  value,
  unit,
  target: most === null ? null : { atMost: most }
});

async function opened(browser: Browser, name: string, url: string): Promise<Metrics> {
  // The service worker fetches the whole site for later, beside the page.
  const context = await browser.newContext({ viewport: SCREEN, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript(WATCH);
  const session = await slowed(page);
  // What a page is watched with by program is run in it and would be counted: a line of text asks nothing.
  const alive = page.waitForEvent('console', { predicate: (line) => line.text() === ALIVE });
  await page.goto(url, { waitUntil: 'commit' });
  await alive;
  await page.waitForTimeout(SETTLED_MS);
  const { script, font, first, all } = await fetched(page);
  const { lcp_ms, shifts, blocked_ms } = await page.evaluate(() => window.seen);
  const { metrics } = await session.send('Performance.getMetrics');
  const taken_s = metrics.find((one) => one.name === 'TaskDuration')?.value ?? NaN;
  await page.evaluate(() => (window.seen.inp_ms = 0));
  const isPressed = await pressed(page);
  await page.waitForTimeout(1000);
  const inp_ms = await page.evaluate(() => window.seen?.inp_ms ?? 0).catch(() => 0);
  await context.close();
  return {
    [`light.${name}.javascript`]: atMost(script, 120, 'KiB before it is alive'),
    [`light.${name}.fonts`]: atMost(font, null, 'KiB'),
    [`light.${name}.all`]: atMost(first, 250, 'KiB before it is alive'),
    [`light.${name}.all_later`]: atMost(all, null, 'KiB, left alone for 4 s'),
    [`light.${name}.largest_paint`]: atMost(lcp_ms / 1000, 1.8, 's'),
    [`light.${name}.shifts`]: atMost(shifts, 0.02, 'layout shift'),
    [`light.${name}.blocked`]: atMost(blocked_ms, 300, `ms, ${SLOWED}× slower`),
    [`light.${name}.thread`]: atMost(taken_s, null, 's of tasks, by the clock'),
    ...(isPressed && { [`light.${name}.button`]: atMost(inp_ms, 100, 'ms to the next paint') })
  };
}

function pagesNamed(asked: readonly string[]): [string, string][] {
  const unknown = asked.find((name) => !(name in PAGES));
  if (unknown)
    throw new Error(`bench: no page ${unknown}; there is ${Object.keys(PAGES).join(', ')}`);
  return Object.entries(PAGES).filter(([name]) => asked.length === 0 || asked.includes(name));
}

/** @param asked names of pages; none asks for all of them */
export async function lightMetrics(asked: readonly string[] = []): Promise<Metrics> {
  const own = mkdtempSync(join(tmpdir(), 'feltfoot-bench-'));
  process.env.FELTFOOT_DATA ??= own;
  const build = process.env.FELTFOOT_BUILD || (await ensureBuilt());
  const handler = await loadHandler(resolve(build));
  const { port, stop } = await serve({ handler, port: 0, host: '127.0.0.1' });
  // Not before: what the handler keeps there is written once more as the process ends.
  process.once('exit', () => rmSync(own, { recursive: true, force: true }));
  const args = ['--no-sandbox', '--disable-background-networking'];
  const browser = await chromium.launch({ executablePath: await findChromium(), args });
  try {
    const metrics: Metrics = {};
    for (const [name, path] of pagesNamed(asked)) {
      Object.assign(metrics, await opened(browser, name, `http://localhost:${port}${path}`));
    }
    return metrics;
  } finally {
    await browser.close();
    await stop();
  }
}
