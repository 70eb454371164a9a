import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page, userEvent } from 'vitest/browser';
import '../../../src/app.css';
import SentTry from '../../../src/lib/app/try/SentTry.svelte';
import { toHash } from '../../../src/lib/app/try/try-link';
import type { RodInput } from '../../../src/lib/model';
import type { StoredTry } from '../../../src/lib/wire';

/** A try ends by itself 1.2 s after the last movement. */
const LONG = { timeout: 50_000 };
const azimuth_deg = Array.from({ length: 60 }, (_, i) => 60 + i / 6);
const input: RodInput = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg };

test('a look at a try that was sent is not counted, and is held against nothing', async () => {
  await page.viewport(360, 640);
  const tries: StoredTry[] = [];
  const ontried = (made: Omit<StoredTry, 'id' | 'at'>) => {
    tries.push({ ...made, id: `t${tries.length}`, at: '2030-05-01T08:15:00.000Z' });
    void shown.rerender({ tries: [...tries] });
  };
  const hash = toHash({ challenge: 'one-foot-half-seen', input });
  const props = { hash, units: 'imperial' as const, tries, ontried, onto: null };
  const shown = await render(SentTry, props);
  const rod = page.getByRole('slider', { name: /^Rod/ });
  const turn = async () => {
    await expect.element(rod).toBeVisible();
    (rod.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight>}');
    await new Promise((resolve) => setTimeout(resolve, 800));
    await userEvent.keyboard('{/ArrowRight}');
  };
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await turn();
  const guess = page.getByRole('form', { name: 'Your guess' });
  await guess.getByRole('textbox').first().fill('1', LONG);
  await guess.getByRole('radio').first().click();
  await guess.getByRole('button', { name: 'Call it' }).click();
  await page.getByRole('button', { name: 'Try it with the jig showing' }).click(LONG);
  await turn();
  await expect.element(page.getByText('Not counted: you could see it.'), LONG).toBeVisible();
  await expect.element(page.getByText(/^The one you were sent got \d+\.$/)).toBeVisible();
  expect(page.getByText(/^You: /).all()).toHaveLength(1);
  expect(Object.values(sessionStorage).join()).toMatch(/\[\d+\]/);
});
