import { AXES } from '../src/lib/app/explore/axes';
import type { ExploreBase } from '../src/lib/app/explore/base';
import {
  curvesOf,
  inBatches,
  stagesOf,
  type AskJob,
  type ChartWanted
} from '../src/lib/app/explore/curves';
import { Asker, inPagePort } from '../src/lib/compute';
import { FOOT_M, type ScenarioInput } from '../src/lib/model';
import { FIRST_GEAR, setupOf } from '../src/lib/sandbox/gear';
import { SWEEP_RUNS, sweepScenario } from './model/cases';
import type { Metrics } from './metric';

/** As a page's worker works: in slices, between which it hears that it is cancelled. */
const SLICE_MS = 20;
const ROUNDS = 3;

const BASE: ExploreBase = {
  setup: setupOf(FIRST_GEAR),
  kind: 'sweep',
  tip_m: 2 * FOOT_M,
  duration_s: 2,
  hand: null
};
const chart = (kind: ChartWanted['kind'], axis: keyof typeof AXES): ChartWanted => {
  return { kind, axis: AXES[axis], base: BASE, kept: null, units: 'imperial' };
};
const CHARTS = [
  chart('runs', 'tip'),
  chart('runs', 'depth'),
  chart('limits', 'weight'),
  chart('limits', 'wind'),
  chart('falls', 'depth')
];

/** The best of some rounds, ms of this process on a core: what else the machine does is not the chart's. */
async function best_ms(work: () => Promise<unknown>): Promise<number> {
  const costs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const before = process.cpuUsage().user;
    await work();
    costs.push((process.cpuUsage().user - before) / 1e3);
  }
  return Math.min(...costs);
}

export async function exploreMetrics(): Promise<Metrics> {
  const breathe = () => new Promise<void>((next) => setImmediate(next));
  const compute = new Asker([() => inPagePort({ slice_ms: SLICE_MS, breathe })], 0);
  const ask: AskJob = (job, given) => compute.ask(job, given);
  const first: number[] = [];
  for (const wanted of CHARTS) {
    const [rough] = stagesOf(wanted, curvesOf(wanted));
    first.push(await best_ms(() => rough.make(ask)));
  }
  const scenarios: ScenarioInput[] = Array.from({ length: SWEEP_RUNS }, (_, i) => sweepScenario(i));
  const sweep_ms = await best_ms(async () => {
    for (const some of inBatches(scenarios)) await compute.ask('figures', { scenarios: some });
  });
  compute.close();
  return {
    'explore.first_picture': {
      value: Math.max(...first),
      unit: 'CPU ms, slowest of five charts',
      target: { atMost: 300 }
    },
    'explore.40_runs_of_8_s': {
      value: sweep_ms / 1000,
      unit: 'CPU s, as a chart asks',
      target: { atMost: 1 }
    }
  };
}
