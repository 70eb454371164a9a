import { beforeEach, describe, expect, test, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import { showScheme } from '../../src/lib/shell/scheme';
import SchemeSwitch from '../../src/lib/shell/SchemeSwitch.svelte';

const root = document.documentElement;

beforeEach(() => {
  localStorage.clear();
  delete root.dataset.scheme;
});

describe('the light', () => {
  test.each([
    ['Same as device', 'auto'],
    ['Day', 'light'],
    ['Night', 'dark']
  ] as const)('shows %s as chosen when it is', async (name, scheme) => {
    await render(SchemeSwitch, { scheme, onchoose: () => {} });
    await expect.element(page.getByRole('radio', { name })).toBeChecked();
  });

  test('is chosen by a click', async () => {
    const onchoose = vi.fn();
    await render(SchemeSwitch, { scheme: 'auto', onchoose });
    await page.getByRole('radio', { name: 'Day' }).click();
    expect(onchoose).toHaveBeenLastCalledWith('light');
    await page.getByRole('radio', { name: 'Night' }).click();
    expect(onchoose).toHaveBeenLastCalledWith('dark');
  });

  test('of the page is there again before the first paint, and the device’s own leaves no trace', () => {
    showScheme('dark', localStorage, root);
    expect(root.dataset.scheme).toBe('dark');
    expect(localStorage.getItem('feltfoot-scheme')).toBe('dark');
    showScheme('auto', localStorage, root);
    expect(root.dataset.scheme).toBeUndefined();
    expect(localStorage.length).toBe(0);
  });
});
