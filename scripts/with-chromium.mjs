// Runs one of our test runners with a Chromium found for it: with-chromium.mjs vitest|playwright ...
import { findChromium } from './chromium.mjs';
import { ensureBuilt } from './build.mjs';
import { ensureInstalled } from './install.mjs';
import './orphan.mjs';
import { runInstalled } from './run.mjs';

const runners = { vitest: 'vitest/vitest.mjs', playwright: 'playwright/cli.js' };

const [runner = '', ...args] = process.argv.slice(2);
if (!(runner in runners)) throw new Error(`Unknown test runner: ${runner}`);
await ensureInstalled();
const env = { FELTFOOT_CHROMIUM: await findChromium(), FELTFOOT_BUILD: '' };
if (runner === 'playwright') env.FELTFOOT_BUILD = await ensureBuilt();
const { code } = await runInstalled(runners[runner], args, { env });
process.exitCode = code;
