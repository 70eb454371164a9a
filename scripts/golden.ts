/**
 * npm run golden: writes the golden traces of the model anew. Refuses to where numbers have moved and
 * the model's version has not.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';
import { MODEL_VERSION } from '../src/lib/model';
import { GOLDEN_CASES, goldenTrace } from '../tests/model/golden-cases';

const FILE = 'tests/model/golden.json';

const traces = Object.fromEntries(
  Object.entries(GOLDEN_CASES).map(([name, scenario]) => [name, goldenTrace(scenario)])
);
const old = existsSync(FILE)
  ? (JSON.parse(readFileSync(FILE, 'utf8')) as { version: string; traces: typeof traces })
  : null;
const moved = Object.keys(traces).filter(
  (name) => old?.traces[name] && JSON.stringify(old.traces[name]) !== JSON.stringify(traces[name])
);
if (old?.version === MODEL_VERSION && moved.length > 0) {
  console.error(`These moved, and MODEL_VERSION is still ${MODEL_VERSION}: ${moved.join(', ')}`);
  process.exit(1);
}
const how = { ...(await resolveConfig(FILE)), filepath: FILE };
writeFileSync(FILE, await format(JSON.stringify({ version: MODEL_VERSION, traces }), how));
console.log(`${FILE}: ${MODEL_VERSION}, ${moved.length} moved`);
