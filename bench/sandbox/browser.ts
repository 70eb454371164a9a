import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from 'playwright';
import { build } from 'vite';
import { findChromium } from '../../scripts/chromium.mjs';
import type { Bench } from './page';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The three pictures' places, px, as the app lays them out at that width. */
export interface Screen {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly whole: readonly [number, number];
  readonly bottom: readonly [number, number];
  readonly rod: readonly [number, number];
}

export const DESKTOP: Screen = {
  width: 1280,
  height: 900,
  scale: 1,
  whole: [1120, 370],
  bottom: [760, 310],
  rod: [358, 310]
};
export const PHONE: Screen = {
  width: 360,
  height: 740,
  scale: 2,
  whole: [330, 260],
  bottom: [330, 192],
  rod: [330, 272]
};
/** Most phones of the last years: nine pixels where the plainest screen has one. */
export const SHARP_PHONE: Screen = { ...PHONE, scale: 3 };

declare global {
  interface Window {
    bench: Bench;
  }
}

/** The bench's own page, bundled as the app is. */
async function script(): Promise<string> {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'error',
    resolve: { alias: { $lib: `${root}/src/lib` } },
    build: {
      write: false,
      // A trace tells callbacks apart by their names.
      minify: false,
      rollupOptions: { input: `${root}/bench/sandbox/page.ts`, output: { format: 'iife' } }
    }
  });
  if (!('output' in built)) throw new Error('The bench’s page gave no bundle.');
  return built.output[0].code;
}

/** A Chromium and the page's script, or null where there is no Chromium. */
export async function open(): Promise<{ browser: Browser; code: string } | null> {
  let executablePath: string;
  try {
    executablePath = await findChromium();
  } catch {
    return null;
  }
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  return { browser, code: await script() };
}

/** Processor time of every call of the page's callbacks while `run` runs, by name, ms. */
export async function callCosts(
  browser: Browser,
  page: Page,
  run: () => Promise<unknown>
): Promise<Map<string, number[]>> {
  await browser.startTracing(page, { categories: ['devtools.timeline'] });
  await run();
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: TraceEvent[];
  };
  const costs = new Map<string, number[]>();
  for (const { name, tdur, args } of traceEvents) {
    const called = args?.data?.functionName;
    if (name !== 'FunctionCall' || called === undefined || tdur === undefined) continue;
    costs.set(called, [...(costs.get(called) ?? []), tdur / 1000]);
  }
  return costs;
}

interface TraceEvent {
  readonly name: string;
  /** Time of the thread on the processor, µs. */
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly functionName?: string } };
}

/** A new page with the three pictures at the sizes of `screen`. */
export async function pageOn(browser: Browser, code: string, screen: Screen): Promise<Page> {
  const { width, height, scale: deviceScaleFactor } = screen;
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor });
  const place = (name: 'whole' | 'bottom' | 'rod') => {
    const [w, h] = screen[name];
    const canvas = '<canvas style="position:absolute;width:100%;height:100%"></canvas>';
    const style = `position:relative;float:left;width:${w}px;height:${h}px`;
    return `<div id="${name}" style="${style}">${canvas}${canvas}</div>`;
  };
  const tokens = readFileSync(`${root}/src/styles/tokens.css`, 'utf8');
  const pictures = place('whole') + place('bottom') + place('rod');
  await page.setContent(`<!doctype html><style>${tokens}</style><body>${pictures}`);
  await page.addScriptTag({ content: code });
  return page;
}
