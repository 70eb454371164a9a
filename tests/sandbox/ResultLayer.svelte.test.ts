import { createRawSnippet } from 'svelte';
import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page, userEvent } from 'vitest/browser';
import '../../src/app.css';
import GuessForm from '../../src/lib/sandbox/GuessForm.svelte';
import ResultLayer from '../../src/lib/sandbox/ResultLayer.svelte';

const nothing = createRawSnippet(() => ({ render: () => '<p></p>' }));

async function shown() {
  const onagain = vi.fn();
  const about = { isPassed: false, onreplay: () => {}, children: nothing };
  await render(ResultLayer, { ...about, onagain });
  return { onagain, button: page.getByRole('button', { name: 'Try again' }).element() };
}

/** Whether a finger presses it so long after it has come, ms. */
function isPressedAt(button: Element, ms: number): boolean {
  for (const one of button.getAnimations()) {
    one.pause();
    one.currentTime = ms;
  }
  return getComputedStyle(button).pointerEvents !== 'none';
}

test('a finger on its way to Done as the try ends by itself presses nothing of the result', async () => {
  const { button } = await shown();
  expect([0, 400, 850].map((ms) => isPressedAt(button, ms))).toEqual([false, false, false]);
  expect(isPressedAt(button, 1100)).toBe(true);
});

test('nor of what is asked before it', async () => {
  await render(GuessForm, { units: 'imperial', isOver: true, onguess: () => {} });
  for (const one of ['Call it', 'stayed down'].map((name) => page.getByText(name))) {
    const there = one.element().closest('fieldset, button');
    expect([850, 1100].map((ms) => there && isPressedAt(there, ms))).toEqual([false, true]);
  }
});

test('keys wait for nothing', async () => {
  const { button, onagain } = await shown();
  isPressedAt(button, 0);
  (button as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  expect(onagain).toHaveBeenCalledTimes(1);
});
