import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../src/app.css';
import { findChallenge, loadLessons } from '../../src/lib/course';
import { parseSetup } from '../../src/lib/model';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import { taskStepsOf } from '../../src/lib/sandbox/task-steps';
import { hold, press } from './finger';
import { smallWater } from './waters';

const base = {
  setup: smallWater(),
  plane: 'lift',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  hold_s: 1,
  units: 'imperial'
} as const;

/** A finger's events at the rod, where it is on the screen, px. */
function fingerAt(name: string): (type: string, x: number, y: number) => void {
  const place = page.getByRole('slider', { name }).element();
  place.setPointerCapture = () => {};
  return (type, clientX, clientY) =>
    place.dispatchEvent(new PointerEvent(type, { pointerId: 1, bubbles: true, clientX, clientY }));
}

test('tells a finger that let go at the top of a hop to keep on, until it comes down', async () => {
  const step = (does: 'up' | 'down') => ({
    does,
    ...{
      isWaitedFor: false,
      rest_s: 0,
      isSnap: false,
      isQuick: false,
      pace_deg_s: 10,
      pace_m_s: 0
    },
    ...{ least_m: 0, aim_m: 0, way_deg: 1, isStroke: true, isPressStopped: false }
  });
  const steps = [step('up'), step('down')];
  await render(PracticeWater, { ...base, layout: 'screen', steps, name: 'A hop' });
  await expect.element(page.getByText('Drag up, then down, finger on.')).toBeVisible();
  let now_px = 0;
  const finger = fingerAt('Rod, raised and lowered');
  const say = (type: string, up: number) => finger(type, 200, 300 - (now_px = up));
  say('pointerdown', 0);
  for (let up = 0; up <= 60; up += 5) say('pointermove', up);
  await expect
    .element(page.getByRole('button', { name: 'Lower' }), { timeout: 50_000 })
    .toHaveClass('main');
  const keepOn = page.getByText('Keep your finger on: lower it.');
  await expect.element(keepOn).not.toBeInTheDocument();
  say('pointerup', now_px);
  await expect.element(keepOn).toBeVisible();
  say('pointerdown', 60);
  await expect.element(keepOn).not.toBeInTheDocument();
});

test('a finger that rests on the rod keeps its try a while, and is told that letting go ends it', async () => {
  await render(PracticeWater, { ...base, plane: 'sweep', layout: 'screen', name: 'A rest' });
  const water = page.getByRole('region', { name: 'A rest' });
  await expect.element(page.getByRole('slider', { name: /^Rod/ })).toBeVisible();
  const say = fingerAt('Rod, swept to the side');
  const words = page.getByText('Let go to end it, or go on.');
  say('pointerdown', 200, 300);
  for (let x = 200; x <= 320; x += 5) say('pointermove', x, 300);
  await expect.element(words, { timeout: 50_000 }).toBeVisible();
  say('pointermove', 330, 300);
  await expect.element(words).not.toBeInTheDocument();
  await expect.element(water).toHaveAttribute('data-phase', 'moving');
  say('pointerup', 330, 300);
  await expect.element(water, { timeout: 50_000 }).toHaveAttribute('data-phase', 'showing');
});

test('a button that was only tapped is told to be held, by its name', async () => {
  await render(PracticeWater, { ...base, plane: 'sweep', layout: 'screen', name: 'A drag' });
  await expect.element(page.getByRole('slider', { name: /^Rod/ })).toBeVisible();
  for (const name of ['Sweep', 'Forward']) {
    press(name, 60);
    await expect.element(page.getByText(`Too short. Hold ${name}.`)).toBeVisible();
  }
});

test('who taps the wrong button is told to hold the one that is lit', async () => {
  const task = findChallenge('exactly-one-foot', loadLessons());
  if (!task) throw new Error('there is no such task');
  const { plane, start, hold_s } = task;
  const drag = { setup: parseSetup(task.setup), steps: taskStepsOf(task), plane, start, hold_s };
  await render(PracticeWater, { ...drag, units: 'imperial', layout: 'screen', name: 'A foot' });
  await expect.element(page.getByRole('button', { name: 'Sweep' })).toHaveClass('main');
  press('Forward', 60);
  await expect.element(page.getByText('Too short. Hold Sweep.')).toBeVisible();
});

test('the tip’s way is told with its seconds where the jig is hidden, if the page wants it', async () => {
  const hidden = { ...base, plane: 'sweep', layout: 'screen', visibility: 'unseen' } as const;
  const words = page.getByText(/^Tip [\d½].*(in|ft), \d\.\d\ss$/);
  for (const tellsTip of [false, true]) {
    const shown = await render(PracticeWater, { ...hidden, tellsTip, name: 'A drag' });
    await expect.element(page.getByRole('slider', { name: /^Rod/ })).toBeVisible();
    const letGo = hold('Sweep');
    await expect.element(page.getByText(/\d\.\d\ss$/)).toBeVisible();
    await expect.poll(() => words.elements().length).toBe(tellsTip ? 1 : 0);
    letGo(700);
    shown.unmount();
  }
});

test('before a hidden try, too, it is told how the rod is taken, until it moves; not where the page says so', async () => {
  const hidden = { ...base, plane: 'sweep', layout: 'screen', visibility: 'unseen' } as const;
  const told = page.getByText('Drag the rod to the right, or hold Sweep.');
  const above = await render(PracticeWater, { ...hidden, tellsTip: true, name: 'Told above' });
  await expect.element(page.getByText('1 ft of tip')).toBeVisible();
  expect(told.elements()).toHaveLength(0);
  above.unmount();
  await render(PracticeWater, { ...hidden, name: 'A hidden drag' });
  await expect.element(told).toBeVisible();
  press('Sweep', 300);
  await expect.element(told).not.toBeInTheDocument();
});

test('who drags a jig out of sight is told beside the rod to judge for themselves when to stop', async () => {
  const target = { travel_m: [0.23, 0.38] } as const;
  const hidden = {
    ...base,
    plane: 'sweep',
    layout: 'screen',
    visibility: 'unseen',
    target
  } as const;
  await render(PracticeWater, { props: { ...hidden, name: 'A judged drag' } });
  await expect.element(page.getByText('Jig hidden.')).toBeVisible();
  const letGo = hold('Sweep');
  await expect.element(page.getByText('You judge when to stop.')).toBeVisible();
  letGo(700);
});

async function showCount() {
  const task = findChallenge('count-a-lighter-one', loadLessons());
  if (!task) throw new Error('there is no such task');
  const { plane, start, hold_s, longest_pause_s } = task;
  const fall = { setup: parseSetup(task.setup), steps: taskStepsOf(task), plane, start, hold_s };
  await render(PracticeWater, {
    ...{ ...fall, longest_pause_s, units: 'imperial', layout: 'screen' },
    ...{ visibility: 'unseen', name: 'A count' }
  });
}

test('a jig that is to be counted down is dropped by Start, not by the rod', async () => {
  await showCount();
  const start = page.getByRole('button', { name: 'Start' });
  await expect.element(start).toHaveClass('main');
  press('Lower', 400);
  await expect.element(page.getByText('Tap Start first.')).toBeVisible();
  expect(document.querySelector('[data-phase="ready"]')).not.toBeNull();
  await start.click();
  await expect.element(page.getByText('Tap Start first.')).not.toBeInTheDocument();
  await expect.poll(() => document.querySelector('[data-phase="moving"]')).not.toBeNull();
  const letGo = hold('Lower');
  await expect.element(page.getByText('Lower it, then hold still.')).toBeVisible();
  await expect.element(page.getByRole('button', { name: 'Done' })).toHaveClass('main');
  await expect.element(page.getByText('Lowered. Hold still.')).toBeVisible();
  letGo(2000);
});

test('who counts a fall out of sight is told beside the rod what to do, where no button is lit', async () => {
  await showCount();
  const told = page.getByText('Think it’s down? Lower.');
  await expect.element(page.getByText('Jig hidden.')).toBeVisible();
  await page.getByRole('button', { name: 'Start' }).click();
  await expect.element(told).toBeVisible();
  expect(document.querySelectorAll('.bar .main')).toHaveLength(0);
});

test('the scale of a lift goes once the rod moves: it would lie over the boat', async () => {
  await render(PracticeWater, { ...base, layout: 'screen', name: 'A twitch' });
  await expect.element(page.getByText('1 ft of tip')).toBeVisible();
  press('Raise', 300);
  // Now, and not when the result is there: that hides it anyway.
  await expect.poll(() => document.querySelector('[data-phase="moving"]')).not.toBeNull();
  expect(page.getByText('1 ft of tip').elements()).toHaveLength(0);
});
