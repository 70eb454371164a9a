import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import { smallWater } from './waters';

const base = {
  setup: smallWater(),
  plane: 'lift',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  hold_s: 1,
  units: 'imperial'
} as const;

test.each([360, 390])(
  'one press that goes and one that stops have a switch in one line on a phone %i px wide',
  async (width) => {
    await page.viewport(width, 780);
    await render(PracticeWater, base);
    const latch = page.getByRole('button', { name: 'Press to go, press to stop' });
    await expect.element(latch).toBeVisible();
    const { scrollWidth, clientWidth, offsetHeight } = latch.element() as HTMLElement;
    expect(scrollWidth).toBeLessThanOrEqual(clientWidth);
    expect(offsetHeight).toBeLessThan(60);
  }
);
