import { expect, test } from '@playwright/test';
import { faultsOf, sheetsOf, spillOf, visit } from './page';

test.use({ serviceWorkers: 'allow' });

test('nothing can be typed into a day or a card before the record is read, and be lost @narrow', async ({
  browser,
  baseURL
}) => {
  const asleep = await browser.newContext({ javaScriptEnabled: false, baseURL });
  const page = await asleep.newPage();
  const fields = { '/plan': 'Depth', '/card': 'Shallow' };
  for (const [address, field] of Object.entries(fields)) {
    await page.goto(address);
    await expect(page.getByLabel(field)).toBeDisabled();
  }
  await asleep.close();
});

/** A box of jigs is some hundreds of runs on a busy machine. */

test('a day is planned, kept and fished by: six taps log a spell, held against the plan @narrow', async ({
  page,
  context
}) => {
  test.setTimeout(90_000);
  await visit(page, '/plan');
  const depth = page.getByLabel('Depth');
  await depth.fill('66');
  await page.getByRole('button', { name: 'Plan it' }).press('Enter');
  expect(await depth.evaluate((field: HTMLInputElement) => field.validationMessage)).toBe(
    'Depth must be 3\u00a0ft to 60\u00a0ft.'
  );
  await depth.fill('8');
  await page.getByLabel('Cast').fill('30 ft');
  await page.getByRole('button', { name: 'Plan it' }).press('Enter');
  // The trade's part is there at once.
  await expect(page.getByText('Move first: no fish on the graph')).toBeVisible();
  await page.getByRole('button', { name: 'Save it' }).click();
  await expect(page).toHaveURL(/#d1\./);
  await expect(page.getByText(/^Tie on/)).toBeVisible();
  expect(await sheetsOf(page)).toEqual([1, 1]);
  expect(await faultsOf(page)).toEqual([]);
  expect(await spillOf(page)).toBeLessThanOrEqual(0);

  // The card takes over the day, and half its depth beside it.
  await page.getByRole('link', { name: 'Boat card' }).press('Enter');
  await expect(page.getByLabel('Shallow')).toHaveValue('4');
  await expect(page.getByLabel('Deep')).toHaveValue('8');
  await expect(page.getByLabel('Cast')).toHaveValue('30');
  await expect(page.getByRole('combobox', { name: 'Bottom' })).toHaveValue('gravel');

  // And so does every page after it.
  await visit(page, '/water');
  await expect(page.getByRole('slider', { name: 'Depth' })).toHaveAttribute(
    'aria-valuetext',
    /^8\sft$/
  );
  await visit(page, '/log');
  await expect(page.getByText('8 ft, gravel')).toBeVisible();
  const tap = async (role: 'radio' | 'checkbox' | 'button', name: string) => {
    const target = page.getByRole(role, { name, exact: true });
    const box = await target.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), name).toBeGreaterThanOrEqual(48);
    await target.click();
  };
  await tap('radio', 'hop');
  await tap('radio', 'Slow');
  await tap('checkbox', 'Tap, thump');
  await tap('button', 'Bites: more');
  await tap('button', 'Fish: more');
  // The phone is dropped between two taps, far from any network.
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('radio', { name: 'hop', exact: true })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: 'Tap, thump', exact: true })).toBeChecked();
  await tap('button', 'Log it');
  await expect(
    page.getByText(/^Logged\. .*hop, slow, 1 bite, 1 fish in 10 casts, felt tap/)
  ).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Against the plan/ })).toBeVisible();
  expect(await faultsOf(page)).toEqual([]);
  expect(await spillOf(page)).toBeLessThanOrEqual(0);
});
