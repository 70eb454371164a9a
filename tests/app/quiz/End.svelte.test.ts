import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import { itemOf } from '../../../src/lib/course/items';
import End from '../../../src/lib/app/quiz/End.svelte';

const eyes = itemOf('safety-eyes', 1);
const drag = itemOf('mark-drag', 1);
const answered = (...right: boolean[]) =>
  right.map((one, i) => ({ item: [eyes, drag][i], right: one }));
/** A round that no reload cut in two. */
const whole = {
  before: { count: 0, right: 0, missed: [] },
  make: () => Promise.reject(new Error('nothing to make again')),
  isOne: false,
  units: 'metric'
} as const;
const forget = page.getByText(/about to forget/);

test('the end of the questions says how many were right, and the right answer to each that was missed', async () => {
  await render(End, { ...whole, answered: answered(false, true) });
  await expect.element(page.getByText('1 of 2 right')).toBeVisible();
  const missed = page.getByRole('listitem');
  await expect.poll(() => missed.elements().length).toBe(1);
  await expect.element(missed).toHaveTextContent(eyes.ask);
  if (eyes.answer.form !== 'choose') throw new Error('this one is a choice');
  const { key, options } = eyes.answer;
  const says = options.find(({ id }) => id === key)?.says ?? '';
  await expect.element(missed).toHaveTextContent(says);
  await expect.element(page.getByText(/What you missed comes back soon/)).toBeVisible();
});

test('what comes next stands above what was missed', async () => {
  await render(End, { ...whole, answered: answered(false, false) });
  const next = page.getByRole('link', { name: 'What else is up today' }).element();
  const list = page.getByRole('heading', { name: 'What you missed' }).element();
  expect(next.compareDocumentPosition(list)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
});

test('speaks of forgetting only what was right', async () => {
  const { rerender } = await render(End, { ...whole, answered: answered(false, false) });
  await expect.element(page.getByText(/They come back soon/)).toBeVisible();
  await expect.element(forget).not.toBeInTheDocument();
  // A place on the ruler has its answer in the learner's units.
  await expect.element(page.getByText(/\d\s(cm|m), or anything from \d/)).toBeVisible();
  await rerender({ answered: answered(true, true) });
  await expect.element(forget).toBeVisible();
  await expect.element(page.getByRole('listitem')).not.toBeInTheDocument();
});
