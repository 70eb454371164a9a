import { expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import Erase from '../../../src/lib/app/record/Erase.svelte';

const button = (name: string) => page.getByRole('button', { name, exact: true });
const press = (name: string) => (button(name).element() as HTMLElement).click();
const place = (name: string) => {
  const { left, top } = button(name).element().getBoundingClientRect();
  return { left, top };
};
const whileItIsRead = () => new Promise((resolve) => setTimeout(resolve, 650));

test('a double tap on “Erase” erases nothing: “Keep it” stands there, and early presses do nothing', async () => {
  const onerase = vi.fn();
  await render(Erase, { isReady: true, onerase });
  const before = place('Erase');
  await button('Erase').click();
  await expect.element(button('Keep it')).toBeVisible();
  expect(place('Keep it')).toEqual(before);
  expect(place('Yes, erase all of it').top).toBeGreaterThan(before.top);
  await whileItIsRead();
  press('Keep it');
  await expect.element(button('Erase')).toBeVisible();
  expect(onerase).not.toHaveBeenCalled();
});

test('erases once the question can have been read, and not before', async () => {
  const onerase = vi.fn();
  await render(Erase, { isReady: true, onerase });
  press('Erase');
  await expect.element(button('Keep it')).toBeVisible();
  press('Yes, erase all of it');
  press('Keep it');
  expect(onerase).not.toHaveBeenCalled();
  await whileItIsRead();
  press('Yes, erase all of it');
  expect(onerase).toHaveBeenCalledOnce();
  await expect.element(button('Erase')).toBeVisible();
});
