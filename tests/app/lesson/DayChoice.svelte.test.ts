import { page } from 'vitest/browser';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import DayChoice from '../../../src/lib/app/lesson/DayChoice.svelte';
import Feel from '../../../src/lib/app/lesson/Feel.svelte';
import { dayOf } from '../../../src/lib/course/day-choice';
import { findLesson, loadLessons } from '../../../src/lib/course';

/** The model runs every retrieve before it answers. */
const LONG = { timeout: 60_000 };

async function defend(pick: string, why: string): Promise<void> {
  await page.getByRole('radio', { name: pick }).click();
  await page.getByRole('radio', { name: why }).click();
  await page.getByRole('button', { name: 'That’s my pick' }).click();
}

test('a retrieve that was picked and defended is tried in that day’s water', async () => {
  await render(DayChoice, { units: 'imperial', first: 8 });
  expect(dayOf(8)).toMatchObject({ best: 'drag', degF: 62 });
  await defend('Short, slow drags', 'It stays close to one spot');
  await expect.element(page.getByText('Now do it'), LONG).toBeVisible();
  await expect.element(page.getByText('20 ft deep. Drag about 1 ft.'), LONG).toBeVisible();
  await expect.element(page.getByRole('button', { name: 'Take the rod' }), LONG).toBeVisible();
  await page.getByRole('button', { name: 'Another day' }).click();
  expect(page.getByText('Now do it').elements()).toHaveLength(0);
});

test('a swim is right for fish well up, and is tried', async () => {
  await render(DayChoice, { units: 'imperial', first: 10 });
  expect(dayOf(10)).toMatchObject({ best: 'swim', degF: 66 });
  await defend('Swim it off bottom', 'It comes up off bottom');
  await expect.element(page.getByText(/^Right\. Fish well up/), LONG).toBeVisible();
  await expect
    .element(page.getByText('22 ft deep. Lift the jig off bottom and reel.'), LONG)
    .toBeVisible();
});

test('who moves first has no retrieve to try', async () => {
  await render(DayChoice, { units: 'imperial', first: 8 });
  await defend('Move first', 'There’s no fish here');
  await expect.element(page.getByRole('button', { name: 'Another day' }), LONG).toBeVisible();
  expect(page.getByText('Now do it').elements()).toHaveLength(0);
});

test('the map is put away while one picks, and comes back', async () => {
  const map = findLesson('season-map', loadLessons())?.sections.find(({ kind }) => kind === 'feel');
  if (map?.kind !== 'feel') throw new Error('the lesson has no map');
  await render(Feel, { units: 'imperial', section: map });
  const row = page.getByText('Move first.', { exact: true });
  await expect.element(row).toBeVisible();
  await page.getByRole('button', { name: 'Pick for the day' }).click();
  expect(row.elements()).toHaveLength(0);
  await page.getByRole('button', { name: 'Back to the map' }).click();
  await expect.element(row).toBeVisible();
});
