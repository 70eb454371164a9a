import { flushSync, mount, unmount } from 'svelte';
import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import ScreenRod from '../../../src/lib/app/clinic/lead/ScreenRod.svelte';
import { findChallenge, loadLessons } from '../../../src/lib/course';
import type { Challenge } from '../../../src/lib/scoring';

const rod = findChallenge('exactly-one-foot', loadLessons()) as Challenge;

test('what came of a phone’s try stays on the screen while people come and go', async () => {
  let view = $state.raw({ rod, away: 0 });
  const screen = mount(ScreenRod, {
    target: document.body,
    props: {
      get challenge() {
        return view.rod;
      },
      units: 'imperial'
    }
  });
  const water = page.getByRole('region', { name: 'The water of the phone’s rod' });
  await expect.element(water).toHaveAttribute('data-phase', 'ready');
  const begun_ms = performance.now();
  for (let seq = 0; seq <= 20; seq++) {
    const t_ms = seq * 50;
    const samples: [number, number][] = [[t_ms, seq]];
    screen.hear({ hold: 'a phone of the room', seq, again: 0, samples });
    await new Promise((sent) => setTimeout(sent, begun_ms + t_ms + 50 - performance.now()));
  }
  await expect.element(water.getByText('of 100', { exact: true })).toBeVisible();
  view = { rod, away: 1 };
  flushSync();
  await expect.element(water).toHaveAttribute('data-phase', 'showing');
  await expect.element(water.getByRole('button', { name: 'Replay' })).toBeVisible();
  await unmount(screen);
});
