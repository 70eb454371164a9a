import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import Question from '../../../src/lib/app/quiz/Question.svelte';
import { itemOf } from '../../../src/lib/course/items';

test('things to order may be left as they stand, and no word tells whether that is right', async () => {
  const item = itemOf('order-paces', 7);
  if (item.answer.form !== 'order') throw new Error('this one is to be ordered');
  const onanswer = vi.fn();
  await render(Question, { item, units: 'imperial', verdict: null, onanswer, onnext: () => {} });
  const how = page.getByRole('group', { name: 'Put them in order, then press how you got it:' });
  await how.getByRole('button', { name: 'I knew it' }).click();
  const shown = item.answer.things.map(({ id }) => id);
  expect(onanswer).toHaveBeenCalledExactlyOnceWith(shown, 'knew');
});

test('all that is told of an answer stands clear of what comes next, where the window has room', async () => {
  await page.viewport(360, 360);
  const { explain, ...item } = itemOf('near-or-far', 7);
  const given = { units: 'imperial', onanswer: () => {}, onnext: () => {} } as const;
  const asked = { ...item, explain: `${explain} ${explain}` };
  const shown = await render(Question, { ...given, item: asked, verdict: null });
  await shown.rerender({ verdict: { right: true, reply: 'Steep line and a quick hand lift.' } });
  const edge = (at: string, side: 'top' | 'bottom') =>
    document.querySelector(at)?.getBoundingClientRect()[side];
  await expect.poll(() => edge('.next', 'bottom')).toBeLessThanOrEqual(361);
  expect(edge('.told', 'bottom')).toBeLessThanOrEqual(edge('.next', 'top') ?? 0);
});

test('the water that is asked for stands in the window, not below it', async () => {
  await page.viewport(360, 640);
  const item = itemOf('near-or-far', 7);
  const given = { units: 'imperial', onanswer: () => {}, onnext: () => {} } as const;
  const verdict = { right: true, reply: 'Steep line and a quick hand lift.' };
  const shown = await render(Question, { ...given, item, verdict });
  await shown.getByRole('button', { name: 'See it in the water' }).click();
  const heading = shown.getByRole('heading', { name: 'In the water' });
  await expect.poll(() => heading.element().getBoundingClientRect().top).toBeLessThan(320);
});

test.each(['fault-of-drag', 'fault-of-hops'])(
  '%s: the retrieve is watched and not done by hand, and its answers come right under it',
  async (name) => {
    await page.viewport(390, 780);
    const given = { units: 'imperial', onanswer: () => {}, onnext: () => {} } as const;
    const shown = await render(Question, { ...given, item: itemOf(name, 7), verdict: null });
    const showMe = shown.getByRole('button', { name: 'Show me' });
    await expect.element(showMe).toBeVisible();
    for (const hand of ['Start', 'Done', 'Reel in', 'Press to go, press to stop'])
      expect(shown.getByRole('button', { name: hand }).query(), hand).toBeNull();
    const answers = shown.getByRole('radio').first().element();
    const under = (at: Element) => at.getBoundingClientRect().bottom;
    expect(answers.getBoundingClientRect().top - under(showMe.element())).toBeLessThan(150);
    // It waits to be asked for, however long it has been in sight.
    await expect.element(shown.getByRole('button', { name: 'Pause' })).not.toBeInTheDocument();
    await showMe.click();
    await expect.element(shown.getByRole('button', { name: 'Pause' })).toBeVisible();
  }
);
