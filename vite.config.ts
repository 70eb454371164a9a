import { sveltekit } from '@sveltejs/kit/vite';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { fewChunks } from './scripts/few-chunks.mjs';
import { offlineWorkers } from './scripts/offline-workers.mjs';
import { throughIndexes } from './scripts/through-indexes.mjs';
import { wholePreload } from './scripts/whole-preload.mjs';

const componentTests = 'tests/**/*.svelte.test.ts';
const commandTests = 'tests/commands/**/*.test.ts';

/** Not watched: while it runs, no file changes. */
const isRunOnce = process.argv.includes('run');

// A sandbox that needs user namespaces is not to be had as root or in most containers; the pages
// under test are our own.
const chromium = playwright({
  launchOptions: {
    executablePath: process.env.FELTFOOT_CHROMIUM || process.env.CHROME_PATH || undefined,
    args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update']
  },
  // A browser without windows has nobody to ask.
  contextOptions: { permissions: ['accelerometer', 'gyroscope'] }
});

/** Nothing in our rooms does anything by being imported. Styles do. */
const hasSideEffects = (id: string): boolean =>
  !/\/src\/lib\/.*\.(ts|svelte)$/.test(id.split('?')[0]) || id.includes('type=style');

export default defineConfig({
  // Not in node_modules: clones may share that, and each throws away what another bundled, in mid-run.
  cacheDir: '.svelte-kit/vite',
  plugins: [
    sveltekit(),
    throughIndexes(),
    offlineWorkers(),
    wholePreload(),
    fewChunks(hasSideEffects)
  ],
  define: { __FELTFOOT_HAS_SERVER__: JSON.stringify(!process.env.FELTFOOT_STATIC) },
  // A compute worker fetches the code of a job when it is first asked for one.
  worker: { format: 'es' },
  build: {
    rolldownOptions: {
      // A page that takes one name from a room's index gets that file alone, not all that the index names.
      treeshake: { moduleSideEffects: hasSideEffects }
    }
  },
  test: {
    // How long a page takes is the bench’s to say: what never comes fails, what comes late does not.
    expect: { requireAssertions: true, poll: { timeout: 60_000 } },
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          // One worker a core and one copy of the model a worker, not one a file: half the time.
          // Nothing in these rooms keeps state outside its objects; order makes no difference.
          maxWorkers: '100%',
          isolate: false,
          // What hangs ends; what is slow does not fail. Some tests start another program or run the
          // model for seconds, and a machine may be ten times as busy as its cores.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          include: ['tests/**/*.test.ts'],
          exclude: [componentTests, 'tests/e2e/**', commandTests]
        }
      },
      {
        extends: true,
        test: {
          name: 'commands',
          environment: 'node',
          include: [commandTests],
          // Each is a program of its own: two at once keep two cores busy.
          maxConcurrency: 2,
          // The slowest builds the whole app, on a machine that may be busy.
          testTimeout: 300_000,
          // A clone has a thousand files to delete.
          hookTimeout: 60_000
        }
      },
      {
        extends: true,
        // Each file has a frame of its own, which would ask of every module whether it has changed since.
        server: isRunOnce ? { headers: { 'Cache-Control': 'max-age=3600' } } : {},
        test: {
          name: 'browser',
          include: [componentTests],
          testTimeout: 120_000,
          browser: {
            enabled: true,
            provider: chromium,
            headless: true,
            screenshotFailures: false,
            instances: [{ browser: 'chromium' }]
          }
        }
      }
    ]
  }
});
