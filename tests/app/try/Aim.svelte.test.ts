import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page, userEvent } from 'vitest/browser';
import '../../../src/app.css';
import Attempt from '../../../src/lib/app/try/Attempt.svelte';
import challenges from '../../../src/lib/course/lessons/01-one-foot/challenges';
import { parseChallenge } from '../../../src/lib/scoring';
import type { StoredTry } from '../../../src/lib/wire';

/** A try ends by itself 1.2 s after the last movement. */
const LONG = { timeout: 50_000 };
const AIM = /^Aim: tip 1\sft\s\d\sin, (same pace, )?in about \d(\.5)?\ss\.$/;

test('what a missed try says to do stands beside the rod in the next one, before and while it moves', async () => {
  await page.viewport(360, 640);
  const props = {
    challenge: parseChallenge(challenges[0]),
    says: '',
    units: 'imperial' as const,
    tries: [] as StoredTry[],
    ontried: (made: Omit<StoredTry, 'id' | 'at'>) =>
      void shown.rerender({ tries: [{ ...made, id: 'once', at: '2030-05-01T08:15:00.000Z' }] })
  };
  const shown = await render(Attempt, props);
  await page.getByRole('button', { name: 'Take the rod' }).click();
  const rod = page.getByRole('slider', { name: /^Rod/ });
  await expect.element(rod).toBeVisible();
  const hold = async (ms: number) => {
    (rod.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight>}');
    await new Promise((resolve) => setTimeout(resolve, ms));
  };
  // Twice the foot, at the pace of the task’s button.
  await hold(4500);
  await userEvent.keyboard('{/ArrowRight}');
  await expect.element(page.getByText('How the marks add up'), LONG).toBeVisible();
  await expect.element(page.getByText(AIM)).not.toBeInTheDocument();

  await page.getByRole('button', { name: 'Try again' }).click();
  await expect.element(page.getByText(AIM)).toBeVisible();
  await hold(300);
  const aim = page.getByText(AIM).element().getBoundingClientRect();
  await userEvent.keyboard('{/ArrowRight}');
  const scene = document.querySelector('.scene')?.getBoundingClientRect();
  expect(aim.bottom).toBeLessThanOrEqual(640);
  expect(aim.top).toBeGreaterThanOrEqual(scene?.bottom ?? Infinity);
});
