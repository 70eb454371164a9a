import { expect, test } from '@playwright/test';
import { beginLesson } from './begin';

test(
  'every page has the bar, and every room of it is a page',
  { tag: '@narrow' },
  async ({ page }) => {
    await page.goto('/about');
    for (const [name, heading] of [
      ['Lessons', 'Lessons'],
      ['Practice', 'Practice'],
      ['Questions', 'Questions for today'],
      ['Your ruler', 'Your ruler']
    ]) {
      const room = page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name });
      await room.click();
      await expect(page.getByRole('heading', { level: 1, name: heading })).toBeVisible();
      await expect(room).toHaveAttribute('aria-current', 'page');
    }
  }
);

test(
  'a lesson opened again after a reload stands at the step where it was left',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await page.goto('/lessons/one-foot');
    await beginLesson(page);
    const asked = page.locator('section#predict');
    await asked.getByRole('radio').nth(1).check();
    await asked.getByRole('button', { name: 'Lock it in' }).click();
    await page.getByRole('button', { name: 'Next: See it' }).click();
    await page.getByRole('button', { name: 'Next: Drag it one foot' }).click();
    await page.goto('/lessons');
    await expect(page.getByRole('listitem').filter({ hasText: 'One foot' })).toContainText('begun');
    await page.getByRole('link', { name: 'Next: Lesson 1, One foot' }).click();
    const step = page.getByRole('heading', { level: 2, name: 'Drag it one foot' });
    await expect(step).toBeFocused();
    await expect(step).toBeInViewport();
    await page.reload();
    await expect(step).toBeInViewport();
  }
);
