import { expect, test, vi } from 'vitest';
import type { Component } from 'svelte';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import { BOX_OZ } from '../../../src/lib/course/box';
import { provideLearner, type Learner } from '../../../src/lib/learner';
import { keepPick } from '../../../src/lib/app/gear/kept-pick';
import { FIRST_WATER } from '../../../src/lib/app/gear/weight-water';
import WeightChart from '../../../src/lib/app/gear/WeightChart.svelte';
import { aRecord } from '../../practice/samples';

type Inside = (...args: unknown[]) => unknown;

const chart = ((...args: unknown[]) => {
  provideLearner({ isReady: true, record: aRecord() } as unknown as Learner);
  return (WeightChart as unknown as Inside)(...args);
}) as unknown as Component<{ units: 'imperial'; onmade: () => void }>;

test('a weight that was tied on stands there again after a reload, until another water is asked for', async () => {
  sessionStorage.clear();
  const onmade = vi.fn();
  const open = () =>
    render(chart, { props: { units: 'imperial', onmade } as const, context: new Map() });
  const first = await open();
  await page.getByRole('radio', { name: '3/4' }).click();
  await page.getByRole('button', { name: 'Tie it on' }).click();
  const box = page.getByText('The whole box in this water');
  // The model runs the whole box.
  await expect.element(box, { timeout: 60_000 }).toBeVisible();
  const told = first.container.querySelector('.verdict')?.textContent;
  await first.unmount();

  // At once, or the page would grow under who reads on below it.
  const second = await open();
  expect(box.elements()).toHaveLength(1);
  await expect.element(page.getByRole('radio', { name: '3/4' })).toBeChecked();
  expect(second.container.querySelector('.verdict')?.textContent).toBe(told);
  expect(onmade).toHaveBeenCalledTimes(2);
  await page.getByRole('button', { name: 'Another water' }).click();
  await second.unmount();

  await open();
  await expect.element(page.getByRole('radio', { name: '3/4' })).not.toBeChecked();
  await expect.element(box).not.toBeInTheDocument();
});

test('a weight that misses is told why, and another may be picked until one does it', async () => {
  sessionStorage.clear();
  const onmade = vi.fn();
  const { container } = await render(chart, {
    props: { units: 'imperial', onmade } as const,
    context: new Map()
  });
  const tieOn = async (name: string) => {
    await page.getByRole('radio', { name }).click();
    await page.getByRole('button', { name: 'Tie it on' }).click();
  };
  const told = () => container.querySelector('.verdict')?.textContent ?? '';
  await tieOn('1/4');
  const again = page.getByRole('button', { name: 'Pick again' });
  await expect.element(again, { timeout: 60_000 }).toBeVisible();
  expect(told()).toMatch(/^1\/4\soz: too light\. .*Its count here is \d+\ss/);
  // What does it is in the box alone, for who looks.
  expect(told()).not.toMatch(/Tie on/);
  expect(page.getByRole('table').elements()).toEqual([]);
  expect(onmade).not.toHaveBeenCalled();
  await again.click();
  await tieOn('3/4');
  await expect.element(page.getByRole('button', { name: 'Another water' })).toBeVisible();
  expect(onmade).toHaveBeenCalledExactlyOnceWith(0.75);
  await page.getByText('The whole box in this water').click();
  await expect
    .element(page.getByRole('table', { name: 'Your box in this water, by the model' }))
    .toBeVisible();
  sessionStorage.clear();
});

/** In how many lines the words stand. */
function linesOf(words: Element): number {
  const range = document.createRange();
  range.selectNodeContents(words);
  return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
}

test('on a small phone no head of the table and no note takes more than two lines, and the pull is told what it is', async () => {
  await page.viewport(360, 640);
  const rows = BOX_OZ.map((ounces) => ({
    ...{ ounces, fall_s: 12, fall_band_s: 4.5, drag_s: 4, pull_N: 0.03 + 0.085 * ounces }
  }));
  keepPick(sessionStorage, { water: FIRST_WATER, outfit: undefined, ounces: 0.5, rows });
  const props = { units: 'imperial', onmade: () => {} } as const;
  const { container } = await render(chart, { props, context: new Map() });
  // What a lesson leaves of the phone beside its margins and its line.
  container.style.width = '289px';
  await document.fonts.ready;
  await page.getByText('The whole box in this water').click();
  const heads = page.getByRole('columnheader').elements();
  expect(heads.map((one) => one.textContent?.trim())).toEqual([
    'Jig',
    'Count',
    'Fastest 2\u00a0ft drag',
    'Pull'
  ]);
  const notes = [...container.querySelectorAll('td small')].filter((one) => one.textContent);
  expect(notes.length).toBeGreaterThan(2);
  for (const words of [...heads, ...notes])
    expect(linesOf(words), words.textContent ?? '').toBeLessThanOrEqual(2);
  await expect.element(page.getByText(/Pull is what the rod feels in a slow drag/)).toBeVisible();
  sessionStorage.clear();
});
