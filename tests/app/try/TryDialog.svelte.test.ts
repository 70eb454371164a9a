import { createRawSnippet } from 'svelte';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import TryDialog from '../../../src/lib/app/try/TryDialog.svelte';
import { parseChallenge } from '../../../src/lib/scoring';
import challenges from '../../../src/lib/course/lessons/01-one-foot/challenges';

const [challenge] = challenges.map((one) => parseChallenge(one));
const PROPS = { title: 'A try', task: 'Drag it.', cast: challenge, units: 'imperial' } as const;
const water = createRawSnippet(() => ({ render: () => '<p>the water</p>' }));
history.replaceState({ mark: 'of the page' }, '');
const frame = () => new Promise(requestAnimationFrame);

test('a try’s screen is painted before its water is put up, and is empty again once closed', async () => {
  let puts = 0;
  const children = createRawSnippet(() => ({
    render: () => '<p>the water</p>',
    setup: () => void puts++
  }));
  const screen = await render(TryDialog, {
    ...PROPS,
    children
  });
  // Without waiting, as the browser does before it paints.
  (screen.getByRole('button', { name: 'Take the rod' }).element() as HTMLElement).click();
  await frame();
  await expect.element(screen.getByRole('dialog')).toBeVisible();
  expect(puts).toBe(0);
  await expect.element(screen.getByText('the water')).toBeVisible();
  await screen.getByRole('button', { name: 'Close' }).click();
  await expect.element(screen.getByText('the water')).not.toBeInTheDocument();
  expect(puts).toBe(1);
  await expect.poll(() => history.state).not.toHaveProperty('feltfoot-screen');
});

test('Back puts a try’s screen away, as its button does, and stays on the page; forward opens it again', async () => {
  const steps = history.length;
  const screen = await render(TryDialog, { ...PROPS, children: water });
  const dialog = screen.getByRole('dialog');
  await screen.getByRole('button', { name: 'Take the rod' }).click();
  await expect.element(screen.getByText('the water')).toBeVisible();
  expect(history.state).toMatchObject({ mark: 'of the page' });
  history.back();
  await expect.element(dialog).not.toBeInTheDocument();
  expect(history.state).toEqual({ mark: 'of the page' });
  history.forward();
  await expect.element(dialog).toBeVisible();
  await screen.getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => history.state).toEqual({ mark: 'of the page' });
  await screen.getByRole('button', { name: 'Take the rod' }).click();
  await expect.element(dialog).toBeVisible();
  await screen.rerender({ title: 'The next try' });
  await expect.element(screen.getByText('the water')).toBeVisible();
  await screen.getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => history.state).toEqual({ mark: 'of the page' });
  expect(history.length).toBe(steps);
});
