import { run } from './run.mjs';
import { say } from './say.mjs';

/** What is served must have no fault of this weight or more that is known. */
const LEVEL = 'high';

/** Nothing is known of faults: neither that there are none (0) nor that there are (1). */
const NOT_AUDITED = 2;

/** Asks the registry for known faults of what is installed; says loudly where it does not answer. */
const args = ['audit', '--omit=dev', '--json'];
const { output } = await run('npm', args, { quiet: true, timeoutMs: 60_000 });
const report = parsed(output);
const counts = report?.metadata?.vulnerabilities;
if (!counts) {
  console.error(`!!! NOT AUDITED: the registry gave no report. ${report?.message ?? ''} !!!`);
  process.exitCode = NOT_AUDITED;
} else {
  const { low, moderate, high, critical } = counts;
  say(
    `Known faults in what is served: ${low} low, ${moderate} moderate, ${high} high, ${critical} critical.`
  );
  if (high + critical > 0) {
    const names = Object.keys(report.vulnerabilities ?? {}).join(', ');
    console.error(`Of weight ${LEVEL} or more, among ${names}.`);
    process.exitCode = 1;
  }
}

/** Before and after the report npm may say other things. @param {string} text @returns {any} */
function parsed(text) {
  try {
    return JSON.parse(text.slice(text.indexOf('{'), text.lastIndexOf('}') + 1));
  } catch {
    return undefined;
  }
}
