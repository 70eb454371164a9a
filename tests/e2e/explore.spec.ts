import { expect, test } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { faultsOf, spillOf, visit } from './page';

test(
  'a chart is asked for, read and saved by keys, and its point plays in practice water',
  { tag: '@narrow' },
  async ({ page }) => {
    await visit(page, '/explore');
    const point = page.getByRole('slider', { name: 'Point of the chart' });
    await expect(point).toHaveAttribute('aria-valuetext', /^2\sft: 1\sft\s\d/);
    await page.getByRole('combobox', { name: 'Show' }).selectOption({ label: 'How long it falls' });
    await expect(point).toHaveAttribute('aria-valuetext', /^18\sft: \d.*\ss; likely /);
    await point.focus();
    await page.keyboard.press('ArrowRight');
    await expect(point).toHaveAttribute('aria-valuetext', /^19\sft: /);
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    await page.getByText('Save the chart').click();
    const save = async (name: string, ending: string) => {
      const saved = page.waitForEvent('download');
      await page.getByRole('button', { name, exact: true }).press('Enter');
      expect((await saved).suggestedFilename()).toBe(`feltfoot-depth.${ending}`);
      return readFile(await (await saved).path(), 'utf8');
    };
    await save('Table', 'csv');
    await save('Picture', 'png');
    // By night it is ink on white all the same.
    const [, red] =
      /<text[^>]* fill="rgb\((\d+)/.exec(await save('Picture for print', 'svg')) ?? [];
    expect(Number(red)).toBeLessThan(128);
    await page.getByRole('button', { name: 'Play it in practice water' }).press('Enter');
    await expect(page.getByRole('region', { name: 'Replay of the try' })).toBeVisible();
    await expect(page.getByText(/^Quillmere, an invented lake, 19\sft deep/)).toBeVisible();
  }
);
