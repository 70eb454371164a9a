import { expect, test, type Page } from '@playwright/test';
import { loadLessons } from '../../src/lib/course';
import { lessonStations } from '../../src/lib/practice';
import { aPlan, anEntry, anOutfit, aRecord, aTry } from '../practice/samples';
import { visit } from './page';
import { takeOver } from './take-over';

/** What web.dev calls good is five times this; one line that comes late is more than this. */
const MOST = 0.02;
/** A page left alone for so long has fetched what it fetches by itself, ms. */
const SETTLED_MS = 3000;

interface Shift {
  value: number;
  /** What moved, from where to where, px. */
  moved: string[];
}
declare global {
  interface Window {
    shifts: Shift[];
    /** What the ruler has said of the hand since it was opened. */
    said: Set<string>;
  }
}
const WATCH = `
  window.shifts = [];
  const told = ({ node, previousRect: a, currentRect: b }) =>
    (node?.textContent ?? '').trim().slice(0, 40) + ' ' + [a.y, a.height, b.y, b.height].map(Math.round).join(' ');
  new PerformanceObserver((list) => {
    for (const { value, hadRecentInput, sources } of list.getEntries()) {
      if (!hadRecentInput) shifts.push({ value, moved: sources.map(told) });
    }
  }).observe({ type: 'layout-shift', buffered: true });
`;

/** A record is read later than a page is first drawn: on a busy machine it is, and else only now and then. */
const READ_LATE = `
  IDBOpenDBRequest.prototype.addEventListener = function (kind, hear, how) {
    const late = (event) => setTimeout(() => hear.call(this, event), 500);
    EventTarget.prototype.addEventListener.call(this, kind, kind === 'success' ? late : hear, how);
  };
`;

/** As far from a mast: what a page fetches late comes late, and what was drawn before has moved or not. */
const FAR = { offline: false, latency: 100, downloadThroughput: 1.1e6, uploadThroughput: 4e5 };

async function farAway(page: Page): Promise<void> {
  await page.addInitScript(WATCH);
  await page.addInitScript(READ_LATE);
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', FAR);
}

/** Nothing of the page as it is now moved by itself. */
async function expectStill(page: Page, what: string): Promise<void> {
  await page.waitForTimeout(SETTLED_MS);
  const shifts = await page.evaluate(() => window.shifts.splice(0));
  const sum = shifts.reduce((all, { value }) => all + value, 0);
  expect(sum, `${what}: ${JSON.stringify(shifts)}`).toBeLessThanOrEqual(MOST);
}

// The first of the lessons is safety, which has nothing to try.
const [, lesson] = loadLessons();
const input = {
  ...({ kind: 'rod_input', rate_Hz: 100, elevation_deg: 8 } as const),
  azimuth_deg: Array.from({ length: 300 }, (_, i) => 60 + Math.min(10, i / 25))
};
const tries = Array.from({ length: 12 }, (_, i) => {
  const { id: challenge } = lesson.challenges[i % lesson.challenges.length];
  return aTry(`t${i}`, { challenge, input, at: `2030-05-01T08:${10 + i}:00.000Z` });
});

/** Somebody with a past: tries, a day planned, a day fished, gear of one's own. */
const EXPERIENCED = aRecord({
  ...{ tries, predictions: [], outfits: [anOutfit('o1')], entries: [anEntry('entry-0123456789')] },
  ...{ plans: [aPlan('plan-0123456789ab')], progress: [] }
});

/** A hand that is all over the place: each try longer or shorter than the one before. */
const THIRTY = Array.from({ length: 30 }, (_, i) => {
  const most_deg = [4, 11, 7, 14, 5][i % 5] + i / 10;
  const azimuth_deg = input.azimuth_deg.map((_, j) => 60 + Math.min(most_deg, j / 25));
  const at = `2030-05-01T08:${10 + i}:00.000Z`;
  return aTry(`t${i}`, { challenge: 'exactly-one-foot', input: { ...input, azimuth_deg }, at });
});

/**
 * What moves is seen on a phone first, and in a lesson and a ruler that are read: `npm test` looks there, `npm run
 * test:long` at the other pages and at a wide window, too.
 */
const WIDTHS = [
  ['on a phone', ['@narrow']],
  ['on a wide window', ['@any-width', '@long']]
] as const;

const LONG = { tag: '@long' };

for (const [where, tag] of WIDTHS) {
  test.describe(`nothing moves by itself ${where}`, { tag: [...tag] }, () => {
    test('where homework is put together or two runs are compared', LONG, async ({ page }) => {
      await farAway(page);
      await visit(page, '/homework');
      await expect(page.getByRole('button', { name: 'First time, 14 minutes' })).toBeVisible();
      await expectStill(page, '/homework');
      await visit(page, '/compare');
      await expect(page.getByRole('heading', { name: '3/4 oz' })).toBeVisible();
      await expectStill(page, '/compare');
    });

    test('where a record is shown', LONG, async ({ page }) => {
      await takeOver(page, EXPERIENCED);
      await farAway(page);
      for (const address of ['/', '/lessons', '/practice', '/standing', '/ruler', '/log']) {
        await visit(page, address);
        await expectStill(page, address);
      }
      await visit(page, '/record');
      await expect(page.getByRole('row')).toHaveCount(1 + tries.length);
      await expectStill(page, 'a list of tries');
    });

    test('the ruler of thirty tries says one thing from the first', async ({ page }) => {
      await takeOver(page, aRecord({ tries: THIRTY, predictions: [], progress: [] }));
      await farAway(page);
      await page.addInitScript(`
        window.said = new Set();
        new MutationObserver(() => {
          const goes = document.querySelector('main h1 ~ * p')?.textContent.trim();
          if (/the jig (now )?goes|Four tries/.test(goes)) said.add(goes);
        }).observe(document, { subtree: true, childList: true, characterData: true });
      `);
      await visit(page, '/ruler');
      await expect(page.getByText(/the jig (now )?goes/)).toBeVisible();
      await expectStill(page, '/ruler');
      expect(await page.evaluate(() => [...window.said])).toHaveLength(1);
      // Of one's own hand, and nothing of most hands beside it.
      await expect(page.getByText(/^Most hands/)).toHaveCount(0);
      await expect(page.locator('main .main')).toHaveText('Drill: drag it as far as you mean');
    });

    test('where a day is planned or its card is made', LONG, async ({ page }) => {
      await takeOver(page, EXPERIENCED);
      await farAway(page);
      for (const address of ['/plan', '/card', '/gear', '/tests', '/water']) {
        await visit(page, address);
        await expectStill(page, address);
      }
      await visit(page, '/plan');
      await page.getByRole('button', { name: '1 May 2030', exact: true }).click();
      await expect(page).toHaveURL(/#d1\./);
      await page.reload();
      await expect(page.getByRole('button', { name: 'Print it' })).toBeVisible();
      await expectStill(page, 'a plan');
      await visit(page, '/card');
      await page.getByRole('button', { name: 'Make the card' }).click();
      await expect(page.getByRole('article')).toBeVisible();
      await expectStill(page, 'a card that is made');
      await page.reload();
      await expect(page.getByRole('article')).toBeVisible();
      await expectStill(page, 'a card');
    });

    test('where one had scrolled to, and the page is loaded again', LONG, async ({ page }) => {
      await takeOver(page, EXPERIENCED);
      await farAway(page);
      for (const address of ['/lessons', '/homework', '/record']) {
        await visit(page, address);
        await page.waitForTimeout(SETTLED_MS);
        const left = await page.evaluate(() => {
          scrollTo(0, 400);
          return scrollY;
        });
        await page.reload();
        await expectStill(page, address);
        expect(await page.evaluate(() => scrollY), address).toBe(left);
      }
    });

    test('in a lesson from its first part to its last', async ({ page }) => {
      const at = '2030-05-01T08:10:00.000Z';
      const stations = lessonStations(lesson, aRecord(), new Map());
      const predictions = stations.flatMap(({ id: station, part }) => {
        const { question } = part.kind === 'predict' ? part.section : {};
        return question ? [{ lesson: lesson.id, station, option: question.options[0].id, at }] : [];
      });
      const reached = stations.map(({ id }) => id);
      const progress = [{ lesson: lesson.id, reached, at, finished: at }];
      await takeOver(page, { ...EXPERIENCED, predictions, progress });
      await farAway(page);
      await visit(page, `/lessons/${lesson.id}`);
      await expect(page.locator('section.shut')).toHaveCount(0);
      await expectStill(page, 'the lesson');
      for (const id of reached) {
        await page.locator(`section#${id}`).evaluate((part) => part.scrollIntoView());
        await expectStill(page, id);
      }
    });
  });
}
