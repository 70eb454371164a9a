import { defineConfig, devices } from '@playwright/test';
import { availableParallelism } from 'node:os';

const launchOptions = {
  executablePath: process.env.FELTFOOT_CHROMIUM || process.env.CHROME_PATH || undefined,
  args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update']
};

// A narrow phone: 360 CSS pixels are the width that every page must do with.
const phone = {
  viewport: { width: 360, height: 740 },
  // A quarter of the pixels to draw; walks that look at pixels ask for a phone’s own (`SHARP`).
  deviceScaleFactor: 1,
  isMobile: true,
  hasTouch: true
};

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  globalSetup: './tests/e2e/serve-build.ts',
  // Half of a walk is waiting, for a hand that moves in real time, a page left alone or a server.
  workers: 2 * availableParallelism() + 1,
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  // A second try is named where the whole ends: it is to be looked into.
  retries: process.env.CI ? 1 : 0,
  timeout: 120_000,
  // How long a page takes to show something is the bench’s to say; a busy machine is no fault of it.
  expect: { timeout: 60_000 },
  use: {
    baseURL: process.env.FELTFOOT_E2E_URL,
    launchOptions,
    // What never comes is named by the step that waits for it, not by the end of the test.
    actionTimeout: 60_000,
    // Every new context would fetch all pages to keep them: only tests without a network allow it.
    serviceWorkers: 'block'
  },
  projects: [
    // What one width proves is not proved again on the other. The longest walks are on the phone, and first.
    { name: 'phone-chromium', use: phone, grepInvert: /@any-width|@long/ },
    {
      name: 'desktop-chromium',
      use: { ...devices['Desktop Chrome'] },
      grepInvert: /@narrow|@long/
    }
  ]
});
