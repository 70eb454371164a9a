import { LiveRun, parseScenario, parseSetup, simulateScenario } from '../../src/lib/model';
import { simulateExplicitly } from '../../tests/published/explicit-peer';
import { cpuSeconds, percentile, type Metrics } from '../metric';
import { twoWorkersOverOne } from './two-workers';
import { MODEL_CASES, MODEL_SETUP, SWEEP_RUNS, sweepScenario } from './cases';

const CASES = Object.values(MODEL_CASES);

function scenarioAt(segments: number, i: number, step_s?: number) {
  return parseScenario({ ...CASES[i], numerics: { segments, step_s } });
}

/** Simulated seconds a CPU second over all cases, the best of three rounds after two to warm up. */
function rate(segments: number): number {
  const scenarios = CASES.map((_, i) => scenarioAt(segments, i));
  const round = () => {
    let simulated_s = 0;
    const spent_s = cpuSeconds(() => {
      for (let repeat = 0; repeat < 6; repeat++) {
        for (const scenario of scenarios) {
          simulated_s += simulateScenario(scenario).trace.t_s.at(-1) ?? 0;
        }
      }
    });
    return simulated_s / spent_s;
  };
  round();
  round();
  return Math.max(round(), round(), round());
}

/** Largest error over the cases against the run refined four times in pieces and step. */
function errors(): { travel: number; height_m: number; height: number; pull: number } {
  const worst = { travel: 0, height_m: 0, height: 0, pull: 0 };
  CASES.forEach((_, i) => {
    const run = simulateScenario(scenarioAt(40, i));
    const fine = simulateScenario(scenarioAt(160, i, 0.00125 / 4));
    const height_m = Math.abs(run.peak_height_m - fine.peak_height_m);
    worst.travel = Math.max(worst.travel, Math.abs(run.travel_m / fine.travel_m - 1));
    // 2 % or 1 mm: heights that are within a millimetre have no relative error worth the name.
    if (height_m > 0.001) worst.height = Math.max(worst.height, height_m / fine.peak_height_m);
    worst.height_m = Math.max(worst.height_m, height_m);
    worst.pull = Math.max(
      worst.pull,
      Math.abs(run.peak_tip_tension_N / fine.peak_tip_tension_N - 1)
    );
  });
  return worst;
}

const FRAMES_A_SECOND = 60;
const FRAME_SETUP = parseSetup(MODEL_SETUP);

/** Time of the model in one frame of the practice water, ms, 95th percentile over a brisk try. */
function frameCost_ms(): number {
  const costs: number[] = [];
  for (let round = 0; round < 4; round++) {
    const live = new LiveRun(FRAME_SETUP, { elevation_deg: 0, azimuth_deg: 0 });
    let ticks = 0;
    for (let frame = 1; frame <= 4 * FRAMES_A_SECOND; frame++) {
      const start = performance.now();
      while (ticks < (frame / FRAMES_A_SECOND) * 100) {
        ticks++;
        live.push({ elevation_deg: 60 * Math.min(1, ticks / 60), azimuth_deg: 0 });
      }
      costs.push(performance.now() - start);
    }
  }
  return percentile(costs, 0.95);
}

/** CPU seconds of one thread for a chart's sweep: 40 runs of 8 s over as many lengths of a slow sweep. */
function sweepCost_s(): number {
  const scenarios = Array.from({ length: SWEEP_RUNS }, (_, i) => parseScenario(sweepScenario(i)));
  const round = () => cpuSeconds(() => scenarios.forEach((one) => simulateScenario(one)));
  round();
  return Math.min(round(), round(), round());
}

function explicitRate(): number {
  const scenario = parseScenario({ ...CASES[0], hold_s: 2, numerics: { segments: 40 } });
  const spent_s = cpuSeconds(() => simulateExplicitly(scenario));
  return 2.35 / spent_s;
}

/** Speed and errors of the model; read from a build by `modelMetrics`, which says why. */
export async function modelFigures(): Promise<Metrics> {
  const rates = { 20: rate(20), 40: rate(40), 80: rate(80) };
  const worst = errors();
  return {
    'model.rate_n20': { value: rates[20], unit: 'simulated s/s', target: null },
    'model.rate_n40': { value: rates[40], unit: 'simulated s/s', target: { atLeast: 800 } },
    'model.sweep_40_runs_of_8_s': {
      value: sweepCost_s(),
      unit: 'CPU s, one thread',
      target: { atMost: 0.5 }
    },
    'model.sweep_over_two_workers': {
      value: await twoWorkersOverOne(),
      unit: '× as soon, by the clock',
      target: { atLeast: 1.7 }
    },
    'model.rate_n80': { value: rates[80], unit: 'simulated s/s', target: null },
    'model.rate_over_explicit_n40': {
      value: rates[40] / explicitRate(),
      unit: '× the explicit peer of the tests, at its 20 µs',
      target: null
    },
    'model.error_travel': { value: 100 * worst.travel, unit: '%', target: { atMost: 1 } },
    'model.error_height': {
      value: 100 * worst.height,
      unit: '% (where over 1 mm)',
      target: { atMost: 2 }
    },
    'model.error_height_mm': { value: 1000 * worst.height_m, unit: 'mm', target: null },
    'model.error_peak_pull': { value: 100 * worst.pull, unit: '%', target: { atMost: 2 } },
    'model.frame_p95': { value: frameCost_ms(), unit: 'ms', target: { atMost: 2 } }
  };
}
