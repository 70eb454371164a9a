// Types: the whole app with Svelte, then the pure rooms again without any browser or Node types.
import { runInstalled } from './run.mjs';
import { sync } from './sync.mjs';

// The compiler in Go, in a third of the time; what lints still asks the one before it.
const tsc = '@typescript/native/bin/tsc';
const app = ['--tsconfig', './tsconfig.json', '--tsgo'];
await sync();
const checks = await Promise.all([
  runInstalled('svelte-check/bin/svelte-check', app, { quiet: true }),
  runInstalled(tsc, ['-p', 'tsconfig.pure.json'], { quiet: true })
]);
for (const { output } of checks) if (output.trim()) console.log(output.trim());
process.exitCode = checks.some(({ code }) => code !== 0) ? 1 : 0;
