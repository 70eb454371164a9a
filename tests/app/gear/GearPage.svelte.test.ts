import { expect, test } from 'vitest';
import type { Component } from 'svelte';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import { provideLearner, type Learner } from '../../../src/lib/learner';
import GearPage from '../../../src/lib/app/gear/GearPage.svelte';
import { anOutfit, aRecord } from '../../practice/samples';

type Inside = (...args: unknown[]) => unknown;

/** The page of a learner whose record is read, or not yet. */
function gearOf(isReady: boolean, record = aRecord()): Component {
  const within: Inside = (...args) => {
    provideLearner({ isReady, record } as unknown as Learner);
    return (GearPage as unknown as Inside)(...args);
  };
  return within as unknown as Component;
}
const context = new Map();

test('until the record is read nothing stands where one’s outfits will, and the foot is below the window', async () => {
  await page.viewport(360, 740);
  const { container } = await render(gearOf(false), { context });
  await expect.element(page.getByRole('heading', { name: 'My gear' })).toBeVisible();
  expect(page.getByRole('button').elements()).toEqual([]);
  expect(container.getBoundingClientRect().height).toBeGreaterThanOrEqual(innerHeight);
});

test('with an outfit another can be added, and with none its form is open', async () => {
  const full = await render(gearOf(true, aRecord({ outfits: [anOutfit('o1')] })), { context });
  await expect.element(page.getByRole('button', { name: 'Add an outfit' })).toBeVisible();
  expect(full.container.getBoundingClientRect().height).toBeGreaterThanOrEqual(innerHeight);
  await full.unmount();
  await render(gearOf(true), { context });
  await expect.element(page.getByRole('heading', { name: 'New outfit' })).toBeVisible();
});
