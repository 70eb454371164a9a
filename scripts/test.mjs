import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt } from './build.mjs';
import { findChromium } from './chromium.mjs';
import { ensureUnpacked } from './install.mjs';
import { fenced, formatted, linted } from './linters.mjs';
import './orphan.mjs';
import { root, run, runInstalled } from './run.mjs';
import { say, since, stopwatch } from './say.mjs';

const reports = join(root, '.feltfoot', 'reports');

/** What earlier steps found for later ones: the browser and the build. */
const found = { FELTFOOT_CHROMIUM: '', FELTFOOT_BUILD: '' };
/** Characters of a page that are enough to see what went wrong. */
const MOST_SHOWN = 12_000;
const total = { passed: 0, failed: 0, skipped: 0 };

/** @param {string} name @param {any} report */
function count(name, report) {
  const { stats } = report;
  const ran = stats
    ? { passed: stats.expected + stats.flaky, failed: stats.unexpected, skipped: stats.skipped }
    : {
        passed: report.numPassedTests,
        failed: report.numFailedTests,
        skipped: report.numPendingTests + report.numTodoTests
      };
  for (const key of /** @type {const} */ (['passed', 'failed', 'skipped'])) total[key] += ran[key];
  if (ran.passed + ran.failed === 0) throw new Error(`${name} ran no test.`);
}

/** @param {string} project */
async function vitest(project) {
  const file = join(reports, `${project}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const args = ['run', '--project', project, ...reporters];
  const { code } = await runInstalled('vitest/vitest.mjs', args, { env: found });
  if (code === 0) count(`vitest ${project}`, JSON.parse(readFileSync(file, 'utf8')));
  return code;
}

async function playwright() {
  const file = join(reports, 'e2e.json');
  const env = { ...found, PLAYWRIGHT_JSON_OUTPUT_FILE: file };
  const args = ['test', '--reporter=list,json'];
  const { code } = await runInstalled('playwright/cli.js', args, { env });
  if (!existsSync(file)) return code || 1;
  const report = JSON.parse(readFileSync(file, 'utf8'));
  if (code === 0) count('playwright', report);
  if (code !== 0 || report.stats.flaky > 0) showPages();
  for (const title of secondTries(report)) say(`  Passed at the second try only: ${title}`);
  return code;
}

/** @param {any} suite of a report, or the report @returns {string[]} */
function secondTries({ suites = [], specs = [] }) {
  const isFlaky = (/** @type {any} */ spec) =>
    spec.tests.some((/** @type {any} */ test) => test.status === 'flaky');
  const here = specs.filter(isFlaky).map((/** @type {any} */ spec) => spec.title);
  return [...here, ...suites.flatMap(secondTries)];
}

/** What stood on the page where a test failed: where only the output is kept, it must say. */
function showPages() {
  const results = join(root, 'test-results');
  for (const test of existsSync(results) ? readdirSync(results) : []) {
    const file = join(results, test, 'error-context.md');
    if (!existsSync(file)) continue;
    const [, details = ''] = readFileSync(file, 'utf8').split('# Error details');
    const [seen] = details.split('# Test source');
    console.error(`\n— ${test}${seen.slice(0, MOST_SHOWN)}`);
  }
}

const types = () => run(process.execPath, ['scripts/check.mjs']).then(({ code }) => code);

const built = async () => {
  found.FELTFOOT_BUILD = await ensureBuilt();
  return 0;
};

/** All at once, to keep both cores busy; the first bad code counts. @param {Record<string, Promise<any>>} parts */
async function together(parts) {
  const from = Date.now();
  const codes = Object.entries(parts).map(async ([name, part]) => {
    const code = await part;
    say(`    ${name}: ${since(from)}`);
    return code ?? 0;
  });
  return (await Promise.all(codes)).find((code) => code !== 0) ?? 0;
}

/** The compile of the store: nothing before the tests in Node needs it. */
let compiled = Promise.resolve();
const unpacked = async () => {
  const { isCompiled } = await ensureUnpacked();
  compiled = isCompiled;
};
/**
 * Of each generator the first questions that may be drawn are made; all of them, `npm run check:items` makes,
 * ten times as many. They wait for nothing: they fill what the steps beside them leave of the cores, and
 * what is then left to do has its own step.
 */
const QUESTION_SEEDS = '1-2';
const stopQuestions = new AbortController();
let questions = Promise.resolve({ code: 0, output: '' });
const beginQuestions = async () => {
  const how = { quiet: true, isFiller: true, signal: stopQuestions.signal };
  const args = ['scripts/check-items.ts', '--seeds', QUESTION_SEEDS];
  questions = runInstalled('tsx/dist/cli.mjs', args, how);
};
const endQuestions = async () => {
  const { code, output } = await questions;
  console.log(output.trim());
  return code;
};

/** In order: the cheap ones that fail most often come first. @type {[string, () => Promise<any>][]} */
const steps = [
  ['install', unpacked],
  ['browser', async () => void (found.FELTFOOT_CHROMIUM = await findChromium())],
  // The store is compiled beside these two and the next three, which one core does not fill.
  ['types and lint', () => together({ types: types(), lint: linted() })],
  // The build before the tests in Node: some of them start a server from it.
  [
    'format, fences and build, beside the rest of the install',
    () =>
      together({
        format: formatted('--check', '--log-level=warn', '.'),
        fences: fenced(),
        build: built(),
        'rest of the install': compiled
      })
  ],
  ['questions that are drawn, begun beside the rest', beginQuestions],
  ['tests in Node', () => vitest('node')],
  // Commands wait for servers, and pages for one thread of a browser: together they fill the cores.
  [
    'commands in a fresh clone, and tests in a browser',
    () => together({ commands: vitest('commands'), 'tests in a browser': vitest('browser') })
  ],
  ['tests end to end', playwright],
  ['the rest of the questions', endQuestions]
];

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const all = stopwatch();
for (const [name, step] of steps) {
  const took = stopwatch();
  say(`— ${name}`);
  try {
    const code = (await step()) ?? 0;
    if (code !== 0) throw new Error(`it ended with code ${code}; what it found is printed above.`);
  } catch (error) {
    console.error(`\nfeltfoot  Failed at “${name}”: ${error.message}`);
    stopQuestions.abort();
    process.exit(1);
  }
  say(`  ${name}: ${took()}`);
}
say(`All of it took ${all()}.`);
const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
