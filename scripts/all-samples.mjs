// The tests in Node, each with all the samples that it can take: all-samples.mjs [files].
import './orphan.mjs';
import { runInstalled } from './run.mjs';

/** What takes all samples runs for many times as long, on a machine that may be busy. */
const MOST_MS = 600_000;
const args = ['run', '--project', 'node', `--testTimeout=${MOST_MS}`, ...process.argv.slice(2)];
const env = { FELTFOOT_ALL_SAMPLES: '1' };
const { code } = await runInstalled('vitest/vitest.mjs', args, { env });
process.exitCode = code;
