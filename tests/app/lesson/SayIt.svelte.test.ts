import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import SayIt from '../../../src/lib/app/lesson/SayIt.svelte';
import { loadLessons, type PredictSection } from '../../../src/lib/course';

const slack = loadLessons().find(({ id }) => id === 'slack');
const section = slack?.sections.find(({ kind }) => kind === 'predict') as PredictSection;
const props = { section, units: 'imperial', onanswered: () => {} } as const;
// The answer takes nine runs of the model.
const LONG = { timeout: 30_000 };

test('inches that are typed are written in feet too, as the question asks', async () => {
  const oncommit = vi.fn();
  const screen = await render(SayIt, { ...props, said: null, oncommit });
  await screen.getByRole('textbox').fill('9');
  await expect.element(screen.getByText(/^=/)).not.toBeInTheDocument();
  await screen.getByRole('textbox').fill('24');
  await expect.element(screen.getByText(/^= 2\sft$/)).toBeVisible();
  await screen.getByRole('button', { name: 'Lock it in' }).click();
  expect(oncommit).toHaveBeenCalledExactlyOnceWith({ option: 'all', said: expect.closeTo(0.6096) });
});

test.each([
  [0.6096, /You said 2\sft: off\./],
  [0.3048, /You said 1\sft: right\./]
])('a number that was said, %d m, is told right or off', async (said, told) => {
  const screen = await render(SayIt, { ...props, said, oncommit: () => {} });
  await expect.element(screen.getByText(told), LONG).toBeVisible();
  await expect.element(screen.getByText(/^Right\./)).not.toBeInTheDocument();
});
