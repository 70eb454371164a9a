import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { page } from 'vitest/browser';
import '../../../src/app.css';
import HomeworkIndex from '../../../src/lib/app/guide/HomeworkIndex.svelte';

const homework = Array.from({ length: 100 }, (_, i) => ({
  ...{ id: `h${i}`, title: `Before Saturday, number ${i + 1}, with a title that a phone breaks` },
  ...{ due: null, isClosed: false, clients: 2, done: 0 }
}));

test.each([360, 1280])(
  'at %i px a hundred homeworks are no wider than the window, and what one does stands below twenty',
  async (width) => {
    await page.viewport(width, 740);
    await render(HomeworkIndex, { homework });
    const set = page.getByRole('link', { name: 'Set homework' });
    await expect.element(set).toBeVisible();
    const links = page.getByRole('listitem');
    expect(links.elements()).toHaveLength(20);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    await page.getByRole('button', { name: 'More' }).click();
    await expect.poll(() => links.elements().length).toBe(40);
  }
);
