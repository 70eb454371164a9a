import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import GuessForm from '../../src/lib/sandbox/GuessForm.svelte';

test('called with nothing filled in, it says what is missing and no field moves; feet alone are enough', async () => {
  await page.viewport(360, 640);
  const onguess = vi.fn();
  const screen = await render(GuessForm, { units: 'imperial', isOver: true, onguess });
  const feet = screen.getByRole('spinbutton', { name: 'It moved, feet' });
  const top_px = () => feet.element().getBoundingClientRect().top;
  await expect.element(feet).toBeVisible();
  const before_px = top_px();
  const call = screen.getByRole('button', { name: 'Call it' });
  await call.click();
  await expect
    .element(screen.getByRole('alert'))
    .toHaveTextContent('It moved: give feet, inches or both, such as 1 ft 3 in.');
  expect(top_px()).toBeCloseTo(before_px, 1);
  // Bright is what comes next: to call it, once there is something to call.
  await expect.element(call).not.toHaveClass('main');
  await feet.fill('1');
  await expect.element(call).not.toHaveClass('main');
  await screen.getByRole('radio', { name: 'stayed down' }).click();
  await expect.element(call).toHaveClass('main');
  await call.click();
  expect(onguess).toHaveBeenCalledWith({
    kind: 'travel',
    travel_m: expect.closeTo(0.3048, 9),
    lifted: false
  });
});
