import { expect, test } from '@playwright/test';
import { linkFor, openSpace } from './in-guide';
import { faultsByDayAndNight, faultsOf, sheetsOf, visit } from './page';
import { expectPrintReadable } from './smallest-text';

test(
  'a party of three is planned on one sheet, by the clock, at any depth, and typed names stay here',
  { tag: ['@any-width', '@long'] },
  async ({ page }) => {
    await openSpace(page);
    await page.getByRole('link', { name: 'Save the key file' }).click();
    await page.getByRole('link', { name: 'Plan a lesson' }).click();
    const sent: string[] = [];
    page.on('request', (request) => sent.push(`${request.url()} ${request.postData() ?? ''}`));
    const more = page.getByRole('button', { name: 'Add someone' });
    await more.click();
    await expect(page.getByRole('combobox', { name: 'Client 2' })).toBeVisible();
    await more.click();
    await expect(page.getByRole('combobox', { name: 'Client 3' })).toBeVisible();
    for (const [i, name] of ['Adalind', 'Bo', 'Wim'].entries())
      await page.getByLabel('Their name').nth(i).fill(name);
    await page.getByRole('spinbutton', { name: 'Depth' }).fill('33');
    await page.getByRole('spinbutton', { name: 'Minutes' }).fill('240');
    await page.getByLabel('Begins at').fill('06:30');
    await page.getByLabel('Begins at').blur();
    await expect(page.getByText(/6:30 am to 10:30 am.*33\sft deep/)).toBeVisible();
    await page.reload();
    await expect(
      page.getByRole('heading', { name: 'Adalind, Bo and Wim, 240 minutes' })
    ).toBeVisible();
    await expect(page.getByRole('row', { name: /^Bo Nobody knows this hand yet/ })).toBeVisible();
    const wide = page.viewportSize();
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await faultsByDayAndNight(page)).toEqual([]);
    if (wide) await page.setViewportSize(wide);
    expect(sent.join()).not.toContain('Adalind');
    expect(await sheetsOf(page)).toEqual([1, 1]);
    await expectPrintReadable(page, 'a party’s plan');
  }
);

test(
  'ten drags on the lawn and a word come back beside the screen, and the grid has them',
  { tag: ['@any-width', '@long'] },
  async ({ page, browser }) => {
    await openSpace(page);
    await page.getByRole('link', { name: 'Set homework' }).click();
    await page.getByText('On the lawn', { exact: true }).click();
    await page.getByRole('checkbox', { name: /^Ten with a real rod/ }).check();
    await page.getByRole('button', { name: 'Make the link' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'Ten on the lawn' })).toBeVisible();
    const link = await linkFor(page);
    const client = await (await browser.newContext()).newPage();
    await visit(client, link);
    await client.getByLabel(/^Your name/).fill('Ina');
    await client.getByRole('button', { name: 'Begin' }).click();
    await client.getByRole('button', { name: 'Ten with a real rod' }).click();
    const drags = client.getByRole('textbox', { name: /^Drag / });
    for (const [i, inches] of [12, 14, 15, 13, 16, 14, 15, 'x', 14, 16].entries())
      await drags.nth(i).fill(`${inches}`);
    // What was typed outlives a page that was closed on the lawn.
    await client.reload();
    await client.getByRole('button', { name: 'Ten with a real rod' }).click();
    await client.getByRole('button', { name: 'Send the ten' }).click();
    await expect(client.getByRole('alert').filter({ hasText: 'Drag 8: “x” is no' })).toBeVisible();
    await expect(drags.nth(7)).toBeFocused();
    await drags.nth(7).fill('15');
    expect(await faultsOf(client)).toEqual([]);
    await client.getByRole('button', { name: 'Send the ten' }).click();
    await expect(client.getByText('Done. Your guide has it all.')).toBeVisible();
    await client.getByText('Write to your guide').click();
    await client.getByLabel(/^What was hard/).fill('The tape slid.');
    await client.getByRole('button', { name: 'Send', exact: true }).click();
    await expect(client.getByText('All sent.')).toBeVisible();

    await visit(page, '/guide');
    await page.getByRole('link', { name: 'Clients at a glance' }).click();
    await expect(page.getByRole('row', { name: /^Ten on the lawn .*done/ })).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('link', { name: 'Ina in Ten on the lawn' }).click();
    await expect(page.getByText('The tape slid.')).toBeVisible();
    await expect(page.getByText(/^Means 1.ft, moves it 1.ft/)).toBeVisible();
    await expect(page.getByRole('img', { name: /^How far it went/ })).toBeVisible();
    expect(await faultsOf(page)).toEqual([]);
  }
);

test(
  'a page that asks for what is new while one goes on from it keeps nobody there',
  { tag: '@any-width' },
  async ({ page }) => {
    await openSpace(page);
    await visit(page, '/guide/clients');
    // A busy server: the next page's words come late, and meanwhile this one asks again.
    await page.route(/\/guide\/__data\.json/, async (route) => {
      await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
      await new Promise((later) => setTimeout(later, 1000));
      await route.continue();
    });
    await page.getByRole('link', { name: 'Your space' }).click();
    await expect(page).toHaveURL(/\/guide$/, { timeout: 15_000 });
  }
);
