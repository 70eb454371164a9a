import { expect, test, vi } from 'vitest';
import type { Component } from 'svelte';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import { provideLearner, type Learner } from '../../../src/lib/learner';
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
  await page.getByRole('radio', { name: '3/8' }).click();
  await page.getByRole('button', { name: 'Tie it on' }).click();
  const box = page.getByRole('table', { name: 'Your box in this water, by the model' });
  // The model runs the whole box.
  await expect.element(box, { timeout: 60_000 }).toBeVisible();
  const told = first.container.querySelector('.verdict')?.textContent;
  await first.unmount();

  // At once, or the page would grow under who reads on below it.
  const second = await open();
  expect(box.elements()).toHaveLength(1);
  await expect.element(page.getByRole('radio', { name: '3/8' })).toBeChecked();
  expect(second.container.querySelector('.verdict')?.textContent).toBe(told);
  expect(onmade).toHaveBeenCalledTimes(2);
  await page.getByRole('button', { name: 'Another water' }).click();
  await second.unmount();

  await open();
  await expect.element(page.getByRole('radio', { name: '3/8' })).not.toBeChecked();
  await expect.element(box).not.toBeInTheDocument();
});
