import { expect, test, type Page } from '@playwright/test';
import { visit } from './page';

/** Gives the page's browser an authenticator of its own, which touches itself. */
async function giveAuthenticator(page: Page, hasPrf: boolean): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('WebAuthn.enable');
  await session.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      ctap2Version: 'ctap2_1',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
      hasPrf
    }
  });
}

async function openSpace(page: Page): Promise<void> {
  await visit(page, '/guide');
  await page.getByLabel('What clients call you').fill('Reedmere Guiding');
  await page.getByRole('button', { name: 'Open a space' }).click();
  await page.getByText('Key and space').click();
}

test(
  'a passkey opens the space again until it is removed',
  { tag: '@any-width' },
  async ({ page }) => {
    await giveAuthenticator(page, true);
    await openSpace(page);
    await page.getByRole('button', { name: 'Add a passkey' }).click();
    await expect(page.getByText('Passkey 1, added')).toBeVisible();

    page.on('dialog', (dialog) => void dialog.accept());
    await page.getByRole('link', { name: 'Save the key file' }).click();
    const leave = async () => page.getByRole('button', { name: 'Leave this browser' }).click();
    await leave();
    await page.getByRole('button', { name: 'Open with a passkey' }).click();
    await expect(page.getByRole('heading', { name: 'Reedmere Guiding' })).toBeVisible();
    // The key of the clients' links came back with it.
    await page.getByText('Key and space').click();
    await page.getByRole('button', { name: 'Remove passkey 1' }).click();
    await expect(page.getByText('Passkey 1, added')).toBeHidden();

    await leave();
    await page.getByRole('button', { name: 'Open with a passkey' }).click();
    await expect(page.getByRole('alert')).toContainText('No space has this passkey');
  }
);

test(
  'an authenticator that gives no secret is told to be none',
  { tag: '@any-width' },
  async ({ page }) => {
    await giveAuthenticator(page, false);
    await openSpace(page);
    await page.getByRole('button', { name: 'Add a passkey' }).click();
    await expect(page.getByRole('alert')).toContainText('Keep the key file');
    await expect(page.getByText('Passkey 1, added')).toBeHidden();
  }
);
