import type { Component } from 'svelte';
import { afterEach, expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import Enter from '../../../src/lib/app/homework/Enter.svelte';
import { provideLearner, type Learner } from '../../../src/lib/learner';
import { aRecord } from '../../practice/samples';

type Inside = (...args: unknown[]) => unknown;

const entrance = ((...args: unknown[]) => {
  provideLearner({ isReady: true, record: aRecord() } as unknown as Learner);
  return (Enter as unknown as Inside)(...args);
}) as unknown as Component<{ share: string; onenter: (name: string) => void }>;

afterEach(() => vi.restoreAllMocks());

test('the form is there once what is asked is, which would push it away from under a finger', async () => {
  let answer: (response: Response) => void = () => {};
  const asked = vi
    .spyOn(window, 'fetch')
    .mockReturnValue(new Promise((resolve) => void (answer = resolve)));
  await render(entrance, { share: 'abc', onenter: () => {} });
  const begin = page.getByRole('button', { name: 'Begin' });
  await expect.poll(() => asked.mock.calls.length).toBe(1);
  await expect.element(page.getByText('One moment.')).toBeVisible();
  expect(begin.elements()).toHaveLength(0);
  // Whoever has no connection can give a name all the same.
  answer(new Response('', { status: 503 }));
  await expect.element(begin).toBeVisible();
});
