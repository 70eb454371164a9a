import { beforeEach, describe, expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { cdp, page, userEvent } from 'vitest/browser';
import '../../src/app.css';
import { simulate } from '../../src/lib/model';
import { REEL_M_S } from '../../src/lib/scoring';
import PracticeWater from '../../src/lib/sandbox/PracticeWater.svelte';
import type { Try } from '../../src/lib/sandbox/live-try';
import { painted } from '../../src/lib/sandbox/painted';
import { PRESS_KEY } from '../../src/lib/sandbox/press-setting';
import { press } from './finger';
import { smallWater } from './waters';

const setup = smallWater();
const base = {
  setup,
  plane: 'lift',
  start: { elevation_deg: 0, azimuth_deg: 0 },
  hold_s: 1,
  units: 'imperial'
} as const;

const rod = () => page.getByRole('slider', { name: 'Rod, raised and lowered' });
/** A try ends by itself 1.2 s after the last movement. */
const LONG = { timeout: 50_000 };

/** Share of the pixels of a picture's front sheet that have been drawn on. */
function inked(name: string): number {
  const canvas = page.getByRole('img', { name }).element().querySelectorAll('canvas')[1];
  const { data } = (canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(
    0,
    0,
    canvas.width,
    canvas.height
  );
  let drawn = 0;
  for (let i = 3; i < data.length; i += 4) if (data[i] > 0) drawn++;
  return drawn / (data.length / 4);
}

async function hold(key: string, ms: number): Promise<void> {
  (rod().element() as HTMLElement).focus();
  await userEvent.keyboard(`{${key}>}`);
  await new Promise((resolve) => setTimeout(resolve, ms));
  await userEvent.keyboard(`{/${key}}`);
}

/** A finger that comes up at once; it comes when there is water to be seen. */
async function tap(name: string): Promise<void> {
  await painted();
  press(name, 60);
}

beforeEach(async () => {
  await page.viewport(1000, 900);
});

describe('practice water', () => {
  test('names its pictures, its rod and its controls', async () => {
    await render(PracticeWater, base);
    await expect.element(page.getByRole('region', { name: 'Practice water' })).toBeVisible();
    await expect.element(page.getByRole('img', { name: 'The whole line' })).toBeVisible();
    await expect.element(page.getByRole('img', { name: 'Close-up of the jig' })).toBeVisible();
    await expect.element(rod()).toHaveAttribute('aria-valuetext', '9.0 o’clock');
    for (const name of ['Raise', 'Lower', 'Slower', 'Faster', 'Start']) {
      const box = page.getByRole('button', { name, exact: true }).element().getBoundingClientRect();
      expect(Math.min(box.width, box.height), name).toBeGreaterThanOrEqual(44);
    }
  });

  test('by keys gives a try that comes out the same when its input is run again', async () => {
    const ontry = vi.fn<(made: Try) => void>();
    await render(PracticeWater, { ...base, ontry });
    await hold('ArrowUp', 700);
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
    const { input, run } = ontry.mock.calls[0][0];
    expect(simulate({ ...setup, move: input, hold_s: 1 })).toEqual(run.result);
    expect(run.result.travel_m).toBeGreaterThan(0.02);
    await expect.element(page.getByRole('group', { name: 'Replay' })).toBeVisible();
    await expect.element(page.getByRole('button', { name: 'Try again' })).toBeVisible();
  });

  test('takes a finger that felt for the rod for no try, and says so', async () => {
    const ontry = vi.fn<(made: Try) => void>();
    await render(PracticeWater, { ...base, ontry });
    const place = rod().element();
    const { left, top, width, height } = place.getBoundingClientRect();
    const at = (dy: number) => ({ clientX: left + width / 2, clientY: top + height / 2 - dy });
    const say = (type: string, dy: number) =>
      place.dispatchEvent(new PointerEvent(type, { pointerId: 1, bubbles: true, ...at(dy) }));
    vi.spyOn(place as HTMLElement, 'setPointerCapture').mockReturnValue();
    say('pointerdown', 0);
    say('pointermove', 2);
    say('pointerup', 2);
    await expect.element(page.getByText('Just a touch').first(), LONG).toBeVisible();
    expect(ontry).not.toHaveBeenCalled();
    await expect.element(page.getByRole('button', { name: 'Start', exact: true })).toBeVisible();
    await hold('ArrowUp', 700);
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
    await vi.waitFor(() => expect(page.getByText('Just a touch').elements()).toHaveLength(0), LONG);
  });

  test('a tap on a button that is to be held is answered at once, and ends no try', async () => {
    const ontry = vi.fn<(made: Try) => void>();
    await render(PracticeWater, { ...base, layout: 'screen', ontry });
    const raise = page.getByRole('button', { name: 'Raise', exact: true }).element();
    vi.spyOn(raise as HTMLElement, 'setPointerCapture').mockReturnValue();
    for (const type of ['pointerdown', 'pointerup'])
      raise.dispatchEvent(new PointerEvent(type, { pointerId: 1, bubbles: true }));
    await expect.element(page.getByText('Too short. Hold Raise.')).toBeVisible();
    await hold('ArrowUp', 700);
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
  });

  test('while a finger drags the rod nothing but letting go is to be done', async () => {
    await render(PracticeWater, { ...base, layout: 'screen', longest_pause_s: 60 });
    const place = rod().element() as HTMLElement;
    vi.spyOn(place, 'setPointerCapture').mockReturnValue();
    const box = place.getBoundingClientRect();
    const say = (type: string, up: number) =>
      place.dispatchEvent(
        new PointerEvent(type, {
          ...{ pointerId: 1, bubbles: true },
          ...{ clientX: box.x + 200, clientY: box.y + 100 - up }
        })
      );
    const done = document.querySelector<HTMLButtonElement>(
      '.do button:last-child'
    ) as HTMLButtonElement;
    say('pointerdown', 0);
    for (let up = 0; up <= 60; up += 5) say('pointermove', up);
    await expect
      .poll(() => document.querySelector<HTMLElement>('.water')?.dataset.phase)
      .toBe('moving');
    expect(done.disabled).toBe(true);
    say('pointerup', 60);
    await expect.poll(() => done.disabled).toBe(false);
  });

  test('makes the next step the bright button, and Done only once the task could be whole', async () => {
    const step = (does: 'up' | 'down' | 'in', least_m = 0) => ({
      ...{ does, least_m, aim_m: least_m, way_deg: 3, isWaitedFor: false, rest_s: 0 },
      ...{ isSnap: false, isStroke: false, isPressStopped: false, isQuick: false },
      ...{ pace_deg_s: 10, pace_m_s: REEL_M_S }
    });
    const steps = [step('up'), step('down'), step('in', 0.1)];
    const task = { ...base, steps, longest_pause_s: 60, layout: 'screen' } as const;
    await render(PracticeWater, task);
    const bright = () =>
      [...document.querySelectorAll('.bar button.main')].map((one) => one.textContent.trim());
    expect(bright()).toEqual(['Raise']);
    const button = (name: string) => page.getByRole('button', { name, exact: true });
    expect(button('Start').elements()).toEqual([]);
    await hold('ArrowUp', 700);
    await vi.waitFor(() => expect(bright()).toEqual(['Lower']), LONG);
    await expect.element(button('Done')).toBeVisible();
    await hold('ArrowDown', 500);
    await vi.waitFor(() => expect(bright()).toEqual(['Reel in']), LONG);
    await tap('Reel in');
    await expect.element(page.getByText('Too short.'), LONG).toBeVisible();
    await hold(']', 900);
    await vi.waitFor(() => expect(bright()).toEqual(['Done']), LONG);
  });

  test('says of a tap on a button that it is to be held', async () => {
    await render(PracticeWater, base);
    await tap('Raise');
    await expect.element(page.getByText('Too short.'), LONG).toBeVisible();
    await hold('ArrowUp', 700);
    await vi.waitFor(() => expect(page.getByText('Too short.').elements()).toHaveLength(0), LONG);
  });

  test('follows a held key that the page came to only long after it went down', async () => {
    await render(PracticeWater, base);
    const water = page.getByRole('region', { name: 'Practice water' });
    await expect.element(water).toHaveAttribute('data-phase', 'ready');
    const key = { key: 'ArrowUp', bubbles: true };
    rod().element().dispatchEvent(new KeyboardEvent('keydown', key));
    const busyUntil_ms = performance.now() + 900;
    while (performance.now() < busyUntil_ms);
    await expect.element(water).toHaveAttribute('data-phase', 'moving');
    rod().element().dispatchEvent(new KeyboardEvent('keyup', key));
  });

  test('starts and ends a try with the space bar', async () => {
    const ontry = vi.fn<(made: Try) => void>();
    await render(PracticeWater, { ...base, ontry });
    (rod().element() as HTMLElement).focus();
    await userEvent.keyboard(' ');
    await expect.element(page.getByRole('button', { name: 'Done' })).toBeVisible();
    await userEvent.keyboard(' ');
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
    await userEvent.keyboard(' ');
    await expect.element(page.getByRole('button', { name: 'Start' })).toBeVisible();
  });

  test('is done by one switch that cannot hold: a press goes, the next stops', async () => {
    localStorage.setItem(PRESS_KEY, 'latch');
    const ontry = vi.fn<(made: Try) => void>();
    await render(PracticeWater, { ...base, ontry });
    const raise = page.getByRole('button', { name: 'Raise', exact: true });
    await expect.element(raise).toHaveAttribute('aria-pressed', 'false');
    (raise.element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    await expect.element(raise).toHaveAttribute('aria-pressed', 'true');
    await new Promise((resolve) => setTimeout(resolve, 1_200));
    await userEvent.keyboard('{Enter}');
    await expect.element(raise).toHaveAttribute('aria-pressed', 'false');
    // It would wait for the next press for longer than this test.
    await page.getByRole('button', { name: 'Done' }).click();
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
    const { run } = ontry.mock.calls[0][0];
    // 0.3 m/s of tip for 1.2 s minus the slack, or less where the browser leaves frames out; one press
    // that only nudged would be 9 cm of tip, and no travel once the slack is off.
    expect(run.result.travel_m).toBeGreaterThan(0.1);
    localStorage.removeItem(PRESS_KEY);
  });

  test('changes the speed of held keys by plus and minus', async () => {
    await render(PracticeWater, base);
    (rod().element() as HTMLElement).focus();
    await expect.element(page.getByText('1 ft/s')).toBeVisible();
    await userEvent.keyboard('+');
    await expect.element(page.getByText('1.6 ft/s')).toBeVisible();
    await userEvent.keyboard('--');
    await expect.element(page.getByText('0.5 ft/s')).toBeVisible();
  });

  test('shows nothing but the view from the deck when unseen', async () => {
    const { rerender } = await render(PracticeWater, base);
    await vi.waitFor(() => expect(inked('Close-up of the jig')).toBeGreaterThan(0.001), LONG);
    await rerender({ ...base, visibility: 'unseen' });
    await vi.waitFor(
      () => expect(inked('What you see from the deck')).toBeGreaterThan(0.001),
      LONG
    );
    for (const name of ['The whole line', 'Close-up of the jig']) {
      expect(page.getByRole('img', { name }).elements()).toEqual([]);
    }
    expect(
      page
        .getByText('moved')
        .elements()
        .filter((e) => e.checkVisibility())
    ).toEqual([]);
  });

  test('shows an unseen try only after the guess, and hands over the guess before the try', async () => {
    const told: string[] = [];
    const onguess = vi.fn(() => told.push('guess'));
    const ontry = vi.fn(() => told.push('try'));
    const props = { ...base, visibility: 'unseen', askGuess: true, onguess, ontry } as const;
    await render(PracticeWater, props);
    await hold('ArrowUp', 500);
    await expect.element(page.getByText(/What did the jig do\?/), LONG).toBeVisible();
    expect(page.getByRole('group', { name: 'Replay' }).elements()).toEqual([]);
    await userEvent.keyboard('{Enter}');
    await expect
      .element(page.getByRole('alert'))
      .toHaveTextContent('It moved: give feet, inches or both');
    await page.getByRole('textbox', { name: 'It moved' }).fill('7');
    await page.getByRole('radio', { name: 'lifted' }).click();
    await page.getByRole('button', { name: 'Call it' }).click();
    await expect.element(page.getByRole('group', { name: 'Replay' })).toBeVisible();
    await expect.element(rod()).toHaveFocus();
    expect(told).toEqual(['guess', 'try']);
    expect(onguess).toHaveBeenCalledWith({
      kind: 'travel',
      travel_m: expect.closeTo(7 * 0.0254, 9),
      lifted: true
    });
  });

  test('shows in the replay what was unseen in the try', async () => {
    await render(PracticeWater, { ...base, visibility: 'unseen' });
    await hold('ArrowUp', 500);
    await expect.element(page.getByRole('group', { name: 'Replay' }), LONG).toBeVisible();
    await expect.element(page.getByText(/^\s*on the bottom/)).toBeVisible();
  });

  test.each([
    [0, false],
    [1, true],
    [2, false]
  ])('half seen hides every other try: round %i', async (round, isHidden) => {
    await render(PracticeWater, { ...base, visibility: 'half_seen', round });
    await expect.element(rod()).toBeVisible();
    const fromDeck = page.getByRole('img', { name: 'What you see from the deck' });
    expect(fromDeck.elements().length > 0).toBe(isHidden);
  });

  test('plays a demonstration and gives no try for it', async () => {
    const ontry = vi.fn();
    const demo = { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.4 } as const;
    await render(PracticeWater, { ...base, demo, ontry });
    await page.getByRole('button', { name: 'Show me' }).click();
    await expect.element(page.getByRole('button', { name: 'Pause' })).toBeVisible();
    await expect.element(page.getByRole('button', { name: 'Replay' }), LONG).toBeVisible();
    expect(ontry).not.toHaveBeenCalled();
  });

  test('is moved by a phone’s tilt', async () => {
    const devtools = cdp() as unknown as { send(method: string, angles: object): Promise<void> };
    const hold = (beta: number) =>
      devtools.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta, gamma: 0 });
    const ontry = vi.fn<(made: Try) => void>();
    await hold(2);
    await render(PracticeWater, { ...base, ontry });
    await page.getByText('A phone as the rod').click();
    await page.getByRole('button', { name: 'Use this phone' }).click();
    await expect.element(page.getByText('The phone is the rod.')).toBeVisible();
    for (let beta = 4; beta <= 32; beta += 2) await hold(beta);
    await vi.waitFor(() => expect(ontry).toHaveBeenCalledOnce(), LONG);
    const angles = ontry.mock.calls[0][0].input.elevation_deg as number[];
    expect(angles[angles.length - 1]).toBeCloseTo(30, 0);
  });

  test('says what cannot be laid out, and can be used when that is mended', async () => {
    const start = { ...setup.start, slack_m: undefined, horizontal_tension_N: NaN };
    const { rerender } = await render(PracticeWater, { ...base, setup: { ...setup, start } });
    await expect.element(page.getByRole('alert')).toHaveTextContent('doesn’t work together');
    await rerender(base);
    await expect.element(page.getByRole('alert')).not.toBeInTheDocument();
    await expect.element(rod()).toHaveAttribute('aria-valuetext', '9.0 o’clock');
  });
});
