import { createRawSnippet } from 'svelte';
import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page, userEvent } from 'vitest/browser';
import '../../src/app.css';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import { smallWater } from './waters';

/** A try ends by itself, and plays itself once. */
const LONG = { timeout: 50_000 };

test('beside the jig stands how far it moved, also where that was called before', async () => {
  const called = '<p class="called">You said 1 ft.</p>';
  await render(PracticeWater, {
    ...{ setup: smallWater(), plane: 'lift', start: { elevation_deg: 0, azimuth_deg: 0 } },
    ...{ hold_s: 1, units: 'imperial', visibility: 'unseen', askGuess: true, layout: 'screen' },
    verdict: createRawSnippet(() => ({ render: () => called }))
  });
  const rod = page.getByRole('slider', { name: 'Rod, raised and lowered' }).element();
  (rod as HTMLElement).focus();
  await userEvent.keyboard('{ArrowUp>}');
  await new Promise((resolve) => setTimeout(resolve, 700));
  await userEvent.keyboard('{/ArrowUp}');
  await page.getByRole('textbox', { name: 'in' }).fill('12');
  await page.getByRole('radio', { name: 'stayed down' }).click();
  await page.getByRole('button', { name: 'Call it' }).click();
  await expect.element(page.getByText('You said 1 ft.')).toBeVisible();
  await vi.waitFor(() => {
    const figure = document.querySelector('figure.bottom .many');
    expect(figure?.textContent).toMatch(/\d\sin moved$/);
    expect(figure?.checkVisibility()).toBe(true);
  }, LONG);
});
