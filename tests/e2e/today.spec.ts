import { expect, test, type Page } from '@playwright/test';
import { loadLessons } from '../../src/lib/course';
import { anAnswer, aRecord, aTry } from '../practice/samples';
import { visit } from './page';
import { takeOver } from './take-over';

const [, lesson, second] = loadLessons();
const AT = '2030-05-01T08:10:00.000Z';
const reached = ['about', 'predict', 'see', 'exactly-one-foot', 'result'];
const tries = lesson.challenges.map(({ id: challenge }, i) =>
  aTry(`t${i}`, { challenge, marks: 100, at: AT })
);
/** Each try of the first lesson is passed, and what came of them is read: questions are due as well. */
const IN_THE_MIDDLE = aRecord({
  ...{ tries, predictions: [{ lesson: lesson.id, station: 'predict', option: 'a', at: AT }] },
  ...{ answers: [anAnswer('a1', { right: false, at: AT })] },
  progress: [{ lesson: lesson.id, reached, at: AT, finished: null }]
});

const bright = (page: Page) => page.locator('main .main:visible');

test(
  'in the middle of a lesson the bright button of the day leads to the step one stood at',
  { tag: '@narrow' },
  async ({ page }) => {
    await takeOver(page, IN_THE_MIDDLE);
    await visit(page, '/');
    await expect(bright(page)).toHaveText(['Go on: What you’d feel']);
    await expect(page.locator('main .button').nth(1)).toHaveText(/^Answer \d questions$/);
    await bright(page).click();
    await expect(page).toHaveURL(/one-foot#feel$/);
    await expect(page.locator('section#feel h2')).toBeInViewport();
    const here = page.getByRole('navigation', { name: 'Steps of the lesson' });
    await expect(here.locator('[aria-current]')).toHaveText('What you’d feel');
  }
);

const azimuth_deg = Array.from({ length: 300 }, (_, i) => 60 + Math.min(10, i / 25));
const input = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 8, azimuth_deg } as const;
const drilled = Array.from({ length: 12 }, (_, i) =>
  aTry(`d${i}`, { challenge: `drag-seen-0-${i + 1}`, phase: 'seen', input, at: AT })
);
/** The same, of somebody whose tries have to be run before it is known what is due. */
const DRILLED = { ...IN_THE_MIDDLE, tries: [...tries, ...drilled] };

test(
  'while tries are read the lessons are there, and stay where they are once the day is known',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await takeOver(page, DRILLED);
    await page.route(/worker/i, async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 2000));
      await route.continue();
    });
    await page.goto('/');
    await expect(page.getByText('Reading your tries.')).toBeVisible();
    const lessons = page.getByRole('heading', { name: 'On shore' });
    await expect(lessons).toBeVisible();
    const before = await lessons.boundingBox();
    await expect(bright(page)).toHaveCount(1);
    expect((await lessons.boundingBox())?.y).toBe(before?.y);
  }
);

/** Writes down each text of what is bright on the front page, from the first paint on. */
const WATCH = `
  window.bright = new Set();
  const look = () => {
    for (const one of document.querySelectorAll('main .main'))
      if (one.checkVisibility({ visibilityProperty: true })) bright.add(one.textContent.trim());
    requestAnimationFrame(look);
  };
  look();
`;

test(
  'the day of somebody who has drilled shows one bright button, from the first paint on',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await takeOver(page, DRILLED);
    await visit(page, '/');
    await expect(bright(page)).toHaveCount(1);
    await page.addInitScript(WATCH);
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Today' })).toBeVisible();
    await expect(bright(page)).toHaveCount(1);
    const shown = await page.evaluate(() => [
      ...(window as never as { bright: Set<string> }).bright
    ]);
    expect(shown).toEqual([await bright(page).textContent()]);
    // Practice names the same step, without the questions, which have a page of their own.
    await visit(page, '/practice');
    await expect(bright(page)).toHaveText([shown[0]]);
    await expect(page.getByRole('link', { name: /^Answer/ })).toHaveCount(0);
    const said = await page.locator('main section li span').allTextContents();
    expect(new Set(said).size).toBe(said.length);
  }
);

test(
  'the next lesson is named where all are listed, and no other before it',
  { tag: '@any-width' },
  async ({ page }) => {
    const finished = { lesson: lesson.id, reached, at: AT, finished: AT };
    await takeOver(page, { ...IN_THE_MIDDLE, progress: [finished] });
    await page.addInitScript(WATCH);
    await visit(page, '/lessons');
    await expect(bright(page)).toHaveText([`Next: Lesson 2, ${second.title}`]);
    const shown = () =>
      page.evaluate(() => [...(window as never as { bright: Set<string> }).bright]);
    await expect.poll(shown).toEqual([`Next: Lesson 2, ${second.title}`]);
  }
);
