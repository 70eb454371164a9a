import { expect, test } from '@playwright/test';
import { faultsOf, spillOf, visit } from './page';

test(
  'one’s own outfit is typed, timed, and chosen in practice water',
  { tag: '@narrow' },
  async ({ page }) => {
    await visit(page, '/gear');
    await page.getByLabel('Name').fill('Heavy rod');
    await page.getByRole('button', { name: 'Save outfit' }).press('Enter');
    await expect(page.getByLabel('Weight').first()).toBeFocused();
    await page.getByLabel('Weight').first().fill('0.6 oz');
    await page.getByLabel('Length', { exact: true }).fill('7 ft 4 in');
    await page.getByLabel('Pound test', { exact: true }).fill('15');
    await page.getByText('Time how it falls').click();
    await page.getByLabel('How deep').fill('8');
    await page.getByLabel('Seconds').fill('2.3 2.4 2.3');
    await expect(page.getByText(/^Your drop says drag area/)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Save outfit' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'Heavy rod' })).toBeVisible();

    await visit(page, '/water');
    await page.getByLabel('Gear', { exact: true }).selectOption('Heavy rod');
    const rod = page.getByRole('combobox', { name: 'Rod', exact: true });
    await expect(rod.locator('option:checked')).toHaveText(/7\sft\s4\sin/);
    await page.reload();
    await expect(page.getByLabel('Gear', { exact: true }).locator('option:checked')).toHaveText(
      'Heavy rod'
    );
  }
);

test(
  'a session of tests is fitted, and can be stopped',
  { tag: ['@narrow', '@long'] },
  async ({ page }) => {
    await visit(page, '/tests');
    await page.getByRole('button', { name: 'Look at a demo' }).click();
    await page.getByRole('button', { name: 'Fit the model to these tests' }).click();
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Fit the model to these tests' }).press('Enter');
    const told = page.getByRole('region', { name: 'What the tests say' });
    await expect(told).toBeVisible({ timeout: 30_000 });
    await expect(told.getByRole('img')).toHaveCount(2);
    await expect(
      told.getByText(/^This jig, this rod: 1\sft of tip moves the jig .* at 18\sft, /)
    ).toBeVisible();
    await told.getByLabel('Water').fill('25');
    await told.getByLabel('Water').press('Enter');
    await expect(told.getByText(/ at 25\sft, /)).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    expect(await spillOf(page)).toBeLessThanOrEqual(0);
  }
);
