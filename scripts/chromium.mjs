import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run, runInstalled } from './run.mjs';
import { say } from './say.mjs';

/** The one without windows first: windows cost a third of the time that the tests take. */
const programs = [
  'chromium-headless-shell',
  'chrome-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome'
];
/** What Debian and its like call it; an older one has only the second. */
const packages = ['chromium-headless-shell', 'chromium'];
const elsewhere = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
  'C:/Program Files (x86)/Google/Chrome/Application/chrome.exe'
];

/** A download that stalls must not stall the tests for ever. */
const downloadMs = 180_000;

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function installedChromium() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = programs.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...elsewhere].find(isProgram);
}

/** The browser that Playwright would download, if it has done so before. */
async function playwrightChromium() {
  const { chromium } = await import('playwright-core');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
}

async function fromPackageManager() {
  if (process.getuid?.() !== 0 || !isProgram('/usr/bin/apt-get')) return undefined;
  say('Installing Chromium from the system’s packages…');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], { env, quiet: true });
  for (const name of packages) {
    const install = ['install', '-y', '-qq', '--no-install-recommends', name];
    const { code, output } = await run('apt-get', install, { env, quiet: true });
    if (code === 0) return installedChromium();
    say(output.trim());
  }
  return undefined;
}

async function download() {
  say('No Chromium found; downloading the one Playwright wants…');
  const how = { quiet: true, timeoutMs: downloadMs };
  const { code } = await runInstalled('playwright/cli.js', ['install', 'chromium'], how);
  if (code !== 0) say('The download failed.');
  return code === 0 ? playwrightChromium() : undefined;
}

/**
 * Finds a Chromium for the tests, or gets one.
 * @returns {Promise<string>} path of its program
 */
export async function findChromium() {
  const named = process.env.FELTFOOT_CHROMIUM || process.env.CHROME_PATH;
  if (named) {
    if (isProgram(named)) return named;
    throw new Error(`FELTFOOT_CHROMIUM or CHROME_PATH names ${named}, which is no program.`);
  }
  const found =
    installedChromium() ??
    (await playwrightChromium()) ??
    (await download()) ??
    (await fromPackageManager());
  if (found) return found;
  throw new Error('No Chromium to be had: install one, or name it in FELTFOOT_CHROMIUM.');
}
