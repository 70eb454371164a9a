/**
 * npm run bench: a table of figures. npm run --silent bench -- --json: one object,
 * metric name → { value, unit, target, met }.
 */
import { isMet, type Metrics } from './metric';
import { feltMetrics } from './felt';
import { fitMetrics } from './fit';
import { modelMetrics } from './model';
import { rulerMetrics } from './ruler';
import { sandboxMetrics } from './sandbox';

const metrics: Metrics = {
  ...modelMetrics(),
  ...rulerMetrics(),
  ...feltMetrics(),
  ...fitMetrics(),
  ...(await sandboxMetrics())
};

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
