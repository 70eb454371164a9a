import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import { smallWater } from './waters';

const low = {
  setup: smallWater(),
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 60 },
  hold_s: 1,
  units: 'imperial',
  visibility: 'unseen',
  layout: 'screen'
} as const;

test('tells who pulls a rod from the deck the way that turns nothing which way it goes', async () => {
  await render(PracticeWater, low);
  const handle = page.getByRole('slider').element() as HTMLElement;
  vi.spyOn(handle, 'setPointerCapture').mockReturnValue();
  const say = (type: string, clientY: number) =>
    handle.dispatchEvent(
      new PointerEvent(type, { pointerId: 1, clientX: 300, clientY, bubbles: true })
    );
  say('pointerdown', 500);
  say('pointermove', 420);
  say('pointerup', 420);
  await expect
    .element(page.getByText('Drag the rod to the right, or hold Sweep.'), { timeout: 50_000 })
    .toBeVisible();
});
