/**
 * npm run bench [-- part …]: a table of figures, of every part or of those named; light:ruler,try for two pages.
 * npm run --silent bench -- --json: one object, metric name → { value, unit, target, met }.
 */
import { isMet, type Metrics } from './metric';
import { exploreMetrics } from './explore';
import { feltMetrics } from './felt';
import { filmMetrics } from './film';
import { fitKindMetrics, fitMetrics, fitVariedMetrics } from './fit';
import { lightMetrics } from './light';
import { modelMetrics } from './model';
import { idealMetrics, rulerMetrics } from './ruler';
import { sandboxMetrics } from './sandbox';

const PARTS: Record<string, (asked: readonly string[]) => Metrics | Promise<Metrics>> = {
  model: modelMetrics,
  explore: exploreMetrics,
  ruler: () => ({ ...rulerMetrics(), ...idealMetrics() }),
  felt: feltMetrics,
  fit: () => fitMetrics(),
  'fit-varied': () => fitVariedMetrics(),
  'fit-kinds': () => fitKindMetrics(),
  sandbox: sandboxMetrics,
  film: filmMetrics,
  light: lightMetrics
};

const named = process.argv.slice(2).filter((arg) => arg !== '--json');
/** "light:ruler,try" is the part and what is asked of it. */
const split = (one: string) => {
  const [part, asked = ''] = one.split(':');
  return { part, asked: asked.split(',').filter(Boolean) };
};
const parts = (named.length > 0 ? named : Object.keys(PARTS)).map(split);
const unknown = parts.find(({ part }) => !(part in PARTS))?.part;
if (unknown)
  throw new Error(`bench: no part ${unknown}; there is ${Object.keys(PARTS).join(', ')}`);

const metrics: Metrics = {};
for (const { part, asked } of parts) {
  Object.assign(metrics, await PARTS[part](asked));
}

const rows = Object.entries(metrics).map(([name, metric]) => {
  const { value, unit, target } = metric;
  return { name, value, unit, target, met: isMet(metric) };
});

if (process.argv.includes('--json')) {
  const byName = rows.map(({ name, ...rest }) => [name, rest]);
  console.log(JSON.stringify(Object.fromEntries(byName)));
} else {
  for (const { name, value, unit, target, met } of rows) {
    const bound =
      target === null ? '' : 'atLeast' in target ? `≥ ${target.atLeast}` : `≤ ${target.atMost}`;
    const verdict = met === null ? '' : met ? 'met' : 'MISSED';
    const figure = Number(value.toPrecision(3)).toString();
    console.log(
      `${name.padEnd(32)} ${figure.padStart(9)} ${unit.padEnd(28)} ${bound.padEnd(8)} ${verdict}`
    );
  }
}
