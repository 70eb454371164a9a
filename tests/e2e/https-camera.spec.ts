import { expect, test, type Page } from '@playwright/test';
import { mkdtempSync, rmSync } from 'node:fs';
import { networkInterfaces, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { loadHandler, serve } from '../../server/serve.mjs';
import { tlsFrom } from '../../server/tls.mjs';
import { pageBefore, writeCamera } from './fake-camera';
import { visit } from './page';

/** An address of this machine that is not its own loop, on which http is no secure context; else none. */
const ADDRESS = Object.values(networkInterfaces())
  .flatMap((some) => some ?? [])
  .find(({ internal, family }) => !internal && family === 'IPv4')?.address;

/** Serves as `npm start` does with `--https`, or without, on every address of this machine. */
async function served(isWanted: boolean) {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-https-'));
  const { tls, isOwnMade } = tlsFrom({ isWanted, folder });
  const handler = await loadHandler(resolve(process.env.FELTFOOT_BUILD ?? ''));
  const { port, stop } = await serve({ handler, port: 0, tls, isOwnMade });
  const end = async () => {
    await stop();
    rmSync(folder, { recursive: true });
  };
  return { origin: `${isWanted ? 'https' : 'http'}://${ADDRESS ?? 'localhost'}:${port}`, end };
}

async function openRecorder(page: Page): Promise<void> {
  await visit(page, '/film');
  await page.getByRole('button', { name: 'Record one' }).click();
}

test('the test bench’s camera shows its picture under the certificate that this machine made @any-width', async () => {
  const clip = test.info().outputPath('still.y4m');
  writeCamera(clip, 2, () => 0);
  const { origin, end } = await served(true);
  const page = await pageBefore(clip, origin);
  await openRecorder(page);
  const video = page.locator('video');
  await expect(video).toBeVisible();
  const frames = () =>
    video.evaluate((film: HTMLVideoElement) => film.getVideoPlaybackQuality().totalVideoFrames);
  await expect.poll(frames).toBeGreaterThan(5);
  expect(await video.evaluate((film: HTMLVideoElement) => film.videoWidth)).toBeGreaterThan(0);

  // The motion sensors’ way, too: the page may ask, and hears of a phone that is tilted.
  await visit(page, '/water');
  await page.getByRole('button', { name: 'Take the rod' }).click();
  await page.getByText('More', { exact: true }).click();
  await page.getByText('A phone as the rod').click();
  // A browser without windows has nobody to ask.
  await page.context().grantPermissions(['accelerometer', 'gyroscope']);
  const devtools = await page.context().newCDPSession(page);
  const tilt = (beta: number) =>
    devtools.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta, gamma: 0 });
  await page.getByRole('button', { name: 'Use this phone' }).click();
  // A real sensor goes on speaking; this one does when something has changed.
  await expect(async () => {
    await tilt(20);
    await tilt(21);
    await expect(page.getByText(/^(The phone is the rod|T(ilt|urn) it)/)).toBeVisible({
      timeout: 500
    });
  }).toPass();
  await page.context().browser()?.close();
  await end();
});

test('without https a phone on the network is told that the camera and its sensors want it @any-width', async () => {
  test.skip(!ADDRESS, 'this machine has no address but its own loop');
  const clip = test.info().outputPath('still.y4m');
  writeCamera(clip, 2, () => 0);
  const { origin, end } = await served(false);
  const page = await pageBefore(clip, origin);
  await openRecorder(page);
  await expect(page.getByRole('status').filter({ hasText: 'https' })).toBeVisible();
  await expect(page.locator('video')).toHaveCount(0);
  await page.context().browser()?.close();
  await end();
});
