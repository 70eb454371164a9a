import {
  feltSignal,
  FELT_RATE_HZ,
  GROUND_KINDS,
  parseScenario,
  seededRandom,
  simulateScenario,
  type GroundKind
} from '../src/lib/model';
import type { Metrics } from './metric';

/**
 * Can bottoms be told apart by what reaches the hand alone? Slow drags at differing pace and slack
 * over each kind; plain statistics of the felt signal; a nearest-centroid classifier learnt on some
 * seeds and tried on others. If it cannot, nobody can be taught to.
 */
const TRAINING_SEEDS = 24;
const TEST_SEEDS = 24;

type Features = number[];

function featuresOf(kind: GroundKind, seed: number): Features {
  const random = seededRandom(seed * 31 + 5);
  const { move, hold_s, ...setup } = parseScenario({
    water: { depth_m: 3.4 },
    bottom: { ground: { kind, seed } },
    line: { diameter_m: 0.0003 },
    bait: { mass_kg: 0.0177 },
    start: { bait_x_m: 14, slack_m: 0.05 + 0.1 * random() },
    move: { kind: 'sweep', from_deg: 0, to_deg: 65, duration_s: 3.5 + 2 * random() },
    hold_s: 1
  });
  const { trace } = simulateScenario({ ...setup, move, hold_s });
  return statistics(feltSignal(setup, trace), trace.tip_tension_N);
}

function statistics(felt: Float32Array, pull: readonly number[]): Features {
  const n = felt.length;
  const rms = Math.sqrt(felt.reduce((sum, v) => sum + v * v, 0) / n);
  let crossings = 0;
  let rough = 0;
  for (let i = 1; i < n; i++) {
    if (felt[i] * felt[i - 1] < 0) crossings++;
    rough += (felt[i] - felt[i - 1]) ** 2;
  }
  const sorted = Float32Array.from(felt).sort();
  const at = (share: number) => sorted[Math.floor(share * (n - 1))];
  const drops = countDrops(pull);
  const mean = pull.reduce((a, b) => a + b, 0) / pull.length;
  const early = Math.max(...pull.slice(0, Math.floor(pull.length / 3)));
  return [
    Math.log(rms),
    Math.log(1 + crossings / (n / FELT_RATE_HZ)),
    Math.log(1e-6 + Math.sqrt(rough / n)),
    Math.log(1e-4 + at(0.995)),
    Math.log(1e-4 - at(0.005)),
    Math.log(1 + drops),
    Math.log(mean),
    Math.log(early / mean)
  ];
}

/** Sudden falls of the pull by more than a tenth of a newton within a twentieth of a second. */
function countDrops(pull: readonly number[]): number {
  let drops = 0;
  for (let i = 5; i < pull.length; i += 5) if (pull[i - 5] - pull[i] > 0.1) drops++;
  return drops;
}

interface Confusion {
  share: number;
  table: Map<GroundKind, Map<GroundKind, number>>;
}

function confusion(): Confusion {
  const train = GROUND_KINDS.map((kind) =>
    Array.from({ length: TRAINING_SEEDS }, (_, i) => featuresOf(kind, i + 1))
  );
  const scale = spread(train.map(centre), train);
  const centres = train.map(centre);
  const table = new Map<GroundKind, Map<GroundKind, number>>();
  let right = 0;
  GROUND_KINDS.forEach((kind) => {
    const row = new Map<GroundKind, number>();
    for (let i = 0; i < TEST_SEEDS; i++) {
      const said = nearest(featuresOf(kind, 1000 + i), centres, scale);
      row.set(GROUND_KINDS[said], (row.get(GROUND_KINDS[said]) ?? 0) + 1);
      if (GROUND_KINDS[said] === kind) right++;
    }
    table.set(kind, row);
  });
  return { share: right / (TEST_SEEDS * GROUND_KINDS.length), table };
}

function centre(samples: readonly Features[]): Features {
  return samples[0].map((_, f) => samples.reduce((sum, s) => sum + s[f], 0) / samples.length);
}

/** Standard deviation of each feature within the kinds. */
function spread(centres: readonly Features[], train: readonly Features[][]): Features {
  return centres[0].map((_, f) => {
    let sum = 0;
    let count = 0;
    train.forEach((samples, k) =>
      samples.forEach((s) => {
        sum += (s[f] - centres[k][f]) ** 2;
        count++;
      })
    );
    return Math.sqrt(sum / count) || 1;
  });
}

function nearest(sample: Features, centres: readonly Features[], scale: Features): number {
  const distances = centres.map((c) =>
    c.reduce((sum, value, f) => sum + ((sample[f] - value) / scale[f]) ** 2, 0)
  );
  return distances.indexOf(Math.min(...distances));
}

export function feltMetrics(): Metrics {
  return {
    'felt.bottoms_told_apart': {
      value: 100 * confusion().share,
      unit: '% of held-out drags',
      target: { atLeast: 80 }
    }
  };
}
