import { beforeEach, expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import SchemeSwitch from '../../src/routes/SchemeSwitch.svelte';

beforeEach(() => {
  localStorage.clear();
  delete document.documentElement.dataset.scheme;
});

test('the device decides until the visitor does', async () => {
  await render(SchemeSwitch);
  await expect.element(page.getByLabelText('As the device')).toBeChecked();
  expect(document.documentElement.dataset.scheme).toBeUndefined();
});

test.each([
  ['Night', 'dark'],
  ['Day', 'light']
])('%s is shown at once and remembered', async (name, scheme) => {
  const first = await render(SchemeSwitch);
  await page.getByText(name).click();
  expect(document.documentElement.dataset.scheme).toBe(scheme);
  await first.unmount();
  await render(SchemeSwitch);
  await expect.element(page.getByLabelText(name)).toBeChecked();
});

test('going back to the device’s choice forgets one’s own', async () => {
  await render(SchemeSwitch);
  await page.getByText('Night').click();
  await page.getByText('As the device').click();
  expect(document.documentElement.dataset.scheme).toBeUndefined();
  expect(localStorage.length).toBe(0);
});
