import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import HomeworkChoice from '../../../src/lib/app/clinic/HomeworkChoice.svelte';

const choices = ['2031-05-09T08:05:00.000Z', '2031-05-09T15:30:00.000Z'].map((at, i) => {
  return { id: `h${i}`, title: 'Before Saturday', at };
});

test('homework of one title is told apart by when it was set', async () => {
  await render(HomeworkChoice, { choices, chosen: null, onchoose: () => {} });
  const options = page
    .getByRole('option')
    .elements()
    .map(({ textContent }) => textContent);
  expect(options).toHaveLength(3);
  expect(new Set(options).size).toBe(3);
  expect(options[1]).toMatch(/^Before Saturday, set May \d+, 2031, \d+:05 [ap]m$/);
});
