/** One of the bench's workers: makes the runs of the sweep that it is told to, and says when they are made. */
import { parseScenario, simulateScenario } from '../../src/lib/model';
import { SWEEP_RUNS, sweepScenario } from './cases';

const scenarios = Array.from({ length: SWEEP_RUNS }, (_, i) => parseScenario(sweepScenario(i)));

process.on('message', (runs: number[]) => {
  for (const i of runs) simulateScenario(scenarios[i]);
  process.send?.('done');
});
