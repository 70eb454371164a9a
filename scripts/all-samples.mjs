// The tests in Node, each with all the samples that it can take: all-samples.mjs [files].
import './orphan.mjs';
import { runInstalled } from './run.mjs';

const args = ['run', '--project', 'node', ...process.argv.slice(2)];
const env = { FELTFOOT_ALL_SAMPLES: '1' };
const { code } = await runInstalled('vitest/vitest.mjs', args, { env });
process.exitCode = code;
