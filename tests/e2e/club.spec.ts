import { expect, test } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { faultsOf, spillOf, visit } from './page';

test(
  'invented sessions of a club become a table by keys, which says whose jig is off, and is saved',
  { tag: '@narrow' },
  async ({ page }) => {
    await visit(page, '/tests');
    await page.getByRole('link', { name: 'Pool a club’s sessions' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'A club’s table' })).toBeVisible();
    await page.getByRole('button', { name: 'Look at a demo' }).press('Enter');
    // Two are enough for a table, and a fit takes seconds.
    await page.getByRole('button', { name: 'Leave out Ben' }).press('Enter');
    await page.getByRole('button', { name: 'Leave out Cleo' }).press('Enter');
    await page.getByRole('button', { name: 'Make the table' }).press('Enter');
    const table = page.getByRole('region', { name: 'The table' });
    await expect(table.getByText('Invented numbers')).toBeVisible({ timeout: 40_000 });
    await expect(table.getByText(/They differ by more than their errors/)).toBeVisible();
    await expect(table.getByRole('img')).toHaveCount(2);
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    const saved = page.waitForEvent('download');
    await table.getByRole('button', { name: 'Save the table' }).press('Enter');
    const file = JSON.parse(await readFile(await (await saved).path(), 'utf8'));
    expect(file).toMatchObject({ format: 'feltfoot-jig-table', invented: true });
    expect(file.jigs[0].measured.map(({ by }: { by: string }) => by)).toEqual(['Ana', 'Dov']);
  }
);
