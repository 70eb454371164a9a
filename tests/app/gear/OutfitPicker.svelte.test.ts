import { expect, test } from 'vitest';
import type { Component } from 'svelte';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import { provideLearner, type Learner } from '../../../src/lib/learner';
import OutfitPicker from '../../../src/lib/app/gear/OutfitPicker.svelte';
import { anOutfit, aRecord } from '../../practice/samples';

type Inside = (...args: unknown[]) => unknown;

/** The picker of who has these outfits. */
function pickerOf(outfits: ReturnType<typeof anOutfit>[]): Component {
  const within: Inside = (...args) => {
    provideLearner({ isReady: true, record: aRecord({ outfits }) } as unknown as Learner);
    return (OutfitPicker as unknown as Inside)(...args);
  };
  return within as unknown as Component;
}

async function heightOf(outfits: ReturnType<typeof anOutfit>[]): Promise<number> {
  const props = { value: undefined, onchoose: () => {} };
  const { container, unmount } = await render(pickerOf(outfits), { props, context: new Map() });
  await expect.element(page.getByRole('link')).toBeVisible();
  const height = container.querySelector('.picker')?.getBoundingClientRect().height ?? 0;
  await unmount();
  return height;
}

test('at 360 px the gear one can choose takes no more room than what stands there until it is known', async () => {
  await page.viewport(360, 740);
  const named = {
    ...anOutfit('o1'),
    name: 'A long rod with a heavy jig and a name that no phone has room for'
  };
  const unknown = await heightOf([]);
  expect(unknown).toBeGreaterThan(0);
  expect(await heightOf([named])).toBe(unknown);
});
