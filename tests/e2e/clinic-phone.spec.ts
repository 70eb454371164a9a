import { expect, test } from '@playwright/test';
import { goToQuestion, openClinic, options, phoneIn } from './in-clinic';

test(
  'an answer is sent after a reload, and from a place that the store has lost',
  { tag: ['@any-width', '@long'] },
  async ({ page, browser }) => {
    const code = await openClinic(page);
    const phone = await phoneIn(browser, code);
    const other = await phoneIn(browser, code);
    await goToQuestion(page);

    await phone.route('**/answer', (route) => route.abort());
    await options(phone).nth(1).click();
    await expect(phone.getByText('Sending…')).toBeVisible();
    // Reloaded where nothing gets through at first: the place and the answer wait.
    await phone.route('**/join', (route) => route.abort());
    await phone.reload();
    await expect(phone.getByText(`Joining ${code}.`)).toBeVisible();
    await phone.unroute('**/join');
    await expect(options(phone).nth(1)).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByText('0 of 2 answered')).toBeVisible();
    await phone.unroute('**/answer');
    await expect(page.getByText('1 of 2 answered')).toBeVisible();
    await expect(phone.getByText('Sending…')).toHaveCount(0);

    // A server whose store was put back as it was says so once.
    const refusal = { status: 403, json: { error: 'This phone has no place in this room.' } };
    await other.route('**/answer', (route) => route.fulfill(refusal), { times: 1 });
    const joined = other.waitForRequest('**/join');
    await options(other).nth(0).click();
    await joined;
    await expect(page.getByText('2 of 2 answered')).toBeVisible();
    await expect(other.getByRole('alert')).toHaveCount(0);
  }
);
