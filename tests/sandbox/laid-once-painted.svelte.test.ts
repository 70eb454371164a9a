import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import { FeltChannel } from '../../src/lib/sandbox/felt-channel.svelte';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import { smallWater } from './waters';

const base = {
  setup: smallWater(),
  plane: 'lift',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  hold_s: 1,
  units: 'imperial'
} as const;

test('lays its line when it has been painted, and at once for a hand that comes before', async () => {
  const frames: FrameRequestCallback[] = [];
  const held = vi
    .spyOn(window, 'requestAnimationFrame')
    .mockImplementation((frame) => frames.push(frame));
  // The first that is done with a line that lies.
  const laid = vi.spyOn(FeltChannel.prototype, 'begin');
  await render(PracticeWater, base);
  expect(laid).not.toHaveBeenCalled();
  page
    .getByRole('slider')
    .element()
    .dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true }));
  expect(laid).toHaveBeenCalledOnce();
  held.mockRestore();
  for (const frame of frames) requestAnimationFrame(frame);
  const water = page.getByRole('region', { name: 'Practice water' });
  await expect.element(water).toHaveAttribute('data-phase', 'moving');
  expect(laid).toHaveBeenCalledOnce();
});

test('lays it without a hand, too', async () => {
  const laid = vi.spyOn(FeltChannel.prototype, 'begin');
  laid.mockClear();
  await render(PracticeWater, base);
  await expect.poll(() => laid.mock.calls.length).toBe(1);
});
