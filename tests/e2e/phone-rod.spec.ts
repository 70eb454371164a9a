import { expect, test, type CDPSession, type Page } from '@playwright/test';
import { visit } from './page';

/** Says how the phone is held, as the device's sensor would. */
const hold = (devtools: CDPSession, beta: number) =>
  devtools.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 90, beta, gamma: 0 });

async function openAsPhone(page: Page): Promise<CDPSession> {
  // A browser without windows has nobody to ask.
  await page.context().grantPermissions(['accelerometer', 'gyroscope']);
  const devtools = await page.context().newCDPSession(page);
  await visit(page, '/water');
  await page.getByRole('radio', { name: 'Lift' }).check({ force: true });
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await page.getByText('More', { exact: true }).click();
  await page.getByText('A phone as the rod').click();
  return devtools;
}

test('a phone that is tilted lifts the rod', { tag: '@narrow' }, async ({ page }) => {
  const devtools = await openAsPhone(page);
  await hold(devtools, 20);
  await page.getByRole('button', { name: 'Use this phone' }).tap();
  await expect(page.getByText('The phone is the rod.')).toBeVisible();
  for (let beta = 22; beta <= 60; beta += 2) await hold(devtools, beta);
  await expect(page.getByRole('slider', { name: /^Rod/ })).toHaveAttribute(
    'aria-valuetext',
    /^10\.3 o’clock/
  );
  await page.getByRole('button', { name: 'Done' }).tap();
  await expect(page.getByText(/Tilt it \d+° down/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('More', { exact: true }).tap();
  // A real sensor goes on speaking; this one does when something has changed.
  await hold(devtools, 62);
  await expect(page.getByText('Tilt it 42° down, to where the rod is.')).toBeVisible();
  await hold(devtools, 20);
  await expect(page.getByText('The phone is the rod.')).toBeVisible();
  await page.getByRole('button', { name: 'Off', exact: true }).tap();
  await expect(page.getByText('The phone is the rod.')).toHaveCount(0);
});

test('a device without the sensor is told so', { tag: '@narrow' }, async ({ page }) => {
  await openAsPhone(page);
  await page.getByRole('button', { name: 'Use this phone' }).tap();
  await expect(page.getByText('No reading:')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Use this phone' })).toBeVisible();
});
