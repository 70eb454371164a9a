import { expect, test } from 'vitest';
import { createRawSnippet, type Component } from 'svelte';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import ReviewPage from '../../../src/lib/app/quiz/ReviewPage.svelte';
import { QUESTIONS } from '../../../src/lib/app/quiz/questions';
import challenges from '../../../src/lib/course/lessons/01-one-foot/challenges';
import { itemOf } from '../../../src/lib/course/items';
import { provideLearner, type Learner } from '../../../src/lib/learner';
import { anAnswer, aRecord, aTry } from '../../practice/samples';

type Inside = (...args: unknown[]) => unknown;

/** A whole set of today's, the first two of it missed, as a reload finds it in the record. */
const asked = QUESTIONS.filter(({ lesson }) => lesson === 'safety').slice(0, 8);
const answers = asked.map(({ item }, i) =>
  anAnswer(`a${i}`, { item, seed: 1 + i, right: i > 1, at: new Date().toISOString() })
);
/** Of somebody who was taught: without, there is nothing to ask. */
const tries = challenges.map(({ id }, i) => aTry(`t${i}`, { challenge: id, marks: 100 }));

const afterReload = ((...args: unknown[]) => {
  const record = aRecord({ answers, tries });
  provideLearner({ isReady: true, record, answered: () => {} } as unknown as Learner);
  return (ReviewPage as unknown as Inside)(...args);
}) as unknown as Component<{ first: ReturnType<typeof createRawSnippet> }>;

test('after a reload the end still says how many were right, and lists what was missed before', async () => {
  expect(answers).toHaveLength(8);
  const first = createRawSnippet(() => ({ render: () => '<p></p>' }));
  await render(afterReload, { props: { first }, context: new Map() });
  await expect.element(page.getByText('6 of 8 right')).toBeVisible();
  await expect.element(page.getByText(/What you missed comes back soon/)).toBeVisible();
  await expect.element(page.getByRole('heading', { name: 'What you missed' })).toBeVisible();
  const missed = page.getByRole('listitem');
  await expect.poll(() => missed.elements().length).toBe(2);
  for (const i of [0, 1]) {
    await expect.element(missed.nth(i)).toHaveTextContent(itemOf(asked[i].item, 1 + i).ask);
  }
});
