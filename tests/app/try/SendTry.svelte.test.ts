import { createRawSnippet, mount, unmount } from 'svelte';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import SendTry from '../../../src/lib/app/try/SendTry.svelte';
import TryDialog from '../../../src/lib/app/try/TryDialog.svelte';
import { gradedNow } from '../../../src/lib/app/try/run-try';
import type { TryRun } from '../../../src/lib/app/try/try-runs';
import type { RodInput } from '../../../src/lib/model';
import { parseChallenge } from '../../../src/lib/scoring';
import challenges from '../../../src/lib/course/lessons/01-one-foot/challenges';

const [challenge] = challenges.map((one) => parseChallenge(one));
const swept = Array.from({ length: 60 }, (_, i) => i / 6);
const input: RodInput = { kind: 'rod_input', rate_Hz: 100, elevation_deg: 0, azimuth_deg: swept };
const graded = gradedNow(challenge, { input }) as TryRun;
/** What came of a try, as far as its button to send it goes. */
const result = createRawSnippet(() => ({
  render: () => '<div></div>',
  setup: (target) => {
    const button = mount(SendTry, { target, props: { graded, units: 'imperial' } });
    return () => void unmount(button);
  }
}));
const SCREEN = { title: 'A try', task: 'Drag it.', cast: challenge, units: 'imperial' } as const;

async function sent() {
  navigator.canShare = () => false;
  history.replaceState({ mark: 'of the page' }, '');
  const screen = await render(TryDialog, { ...SCREEN, children: result });
  await screen.getByRole('button', { name: 'Take the rod' }).click();
  await screen.getByRole('button', { name: 'Send it' }).click();
  const sheet = screen.getByRole('dialog', { name: 'Send this try' });
  await expect.element(sheet).toBeVisible();
  return { screen, sheet, below: screen.getByRole('dialog', { name: 'A try', exact: true }) };
}

test('Back puts the sheet away and leaves the result it lies over; one more puts that away', async () => {
  const { sheet, below } = await sent();
  history.back();
  await expect.element(sheet).not.toBeInTheDocument();
  await expect.element(below).toBeVisible();
  history.back();
  await expect.element(below).not.toBeInTheDocument();
  expect(history.state).toEqual({ mark: 'of the page' });
});

test('a tap beside the sheet, on what closes the try below, puts away the sheet alone', async () => {
  const { screen, sheet, below } = await sent();
  const close = screen.getByRole('button', { name: 'Close' }).first().element();
  const { x, y, width, height } = close.getBoundingClientRect();
  const at = document.elementFromPoint(x + width / 2, y + height / 2) as HTMLElement;
  expect(at).toBe(sheet.element());
  at.click();
  await expect.element(sheet).not.toBeInTheDocument();
  await expect.element(below).toBeVisible();
  await expect.poll(() => history.state).not.toHaveProperty('feltfoot-sheet');
  expect(history.state).toHaveProperty('feltfoot-screen');
});

test('its own button puts it away, and Back is then the result’s', async () => {
  const { sheet, below } = await sent();
  await sheet.getByRole('button', { name: 'Close' }).click();
  await expect.element(sheet).not.toBeInTheDocument();
  await expect.poll(() => history.state).not.toHaveProperty('feltfoot-sheet');
  await expect.element(below).toBeVisible();
  history.back();
  await expect.element(below).not.toBeInTheDocument();
});
