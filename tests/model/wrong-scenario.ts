import { seededRandom, type ScenarioInput } from '../../src/lib/model';
import { anyScenario } from './any-scenario';

/** A scenario with one fault, and what the error has to name. */
export interface WrongScenario {
  path: string;
  value: unknown;
  scenario: unknown;
}

const OUT = [Number.NaN, Infinity, '5', null, [1], {}] as const;
const LIFT = { kind: 'lift', from_deg: 0, to_deg: 30, duration_s: 0.5 };
const LEADER = { diameter_m: 0.0003, length_m: 2 };
const PROFILE = { x_m: [0, 10, 20], z_m: [-3, -4, -5] };

/** Fields, with values that each refuses beside those that no number field takes. */
const FIELDS: readonly [path: string, values: readonly unknown[]][] = [
  ['water.depth_m', [0, -4, 81, ...OUT]],
  ['water.temperature_C', [-1, 41, ...OUT]],
  ['bottom.friction', [-0.1, 2.1, ...OUT]],
  ['bottom.snags', [1, 'yes', null]],
  ['wind_m_s', [-31, 31, ...OUT]],
  ['drift_m_s', [-3.1, 4, ...OUT]],
  ['line.diameter_m', [0, -0.0003, 0.3, ...OUT]],
  ['line.material', ['silk', 3, null]],
  ['line.density_kg_m3', [0, 1e5, ...OUT]],
  ['line.youngs_modulus_Pa', [0, 1e12, ...OUT]],
  ['line.tangential_drag', [-1, 2, ...OUT]],
  ['line.breaking_load_N', [0, 5000, ...OUT]],
  ['bait.mass_kg', [0, -0.02, 2, ...OUT]],
  ['bait.drag_area_m2', [-1e-4, 1, ...OUT]],
  ['bait.lift_to_drag', [-0.1, 1.1, ...OUT]],
  ['rod.length_m', [0, 7, ...OUT]],
  ['rod.pivot_height_m', [-1, 11, ...OUT]],
  ['rod.tip_stiffness_N_per_m', [0, -4, 1e6, Number.NaN]],
  ['start.bait_x_m', [0, 0.01, 101, ...OUT]],
  ['start.line', ['tight', 1, null]],
  ['start.spool', ['open', 2, null]],
  ['start.slack_m', [-0.1, 11, ...OUT]],
  ['numerics.segments', [1, 2.5, 641, ...OUT]],
  ['numerics.step_s', [0, 1, ...OUT]],
  ['hold_s', [-1, 601, ...OUT]]
];

/** Faults that only several fields together make. */
const TOGETHER: readonly [path: string, at: string, value: unknown, named?: unknown][] = [
  ['bottom.profile', 'bottom.profile', { ...PROFILE, z_m: [-3, -4] }],
  ['bottom.profile', 'bottom.profile', { x_m: [0, 10, 10], z_m: [-3, -4, -5] }],
  ['bottom.stones.0.height_m', 'bottom.stones', [{ x_m: 9, width_m: 0.2, height_m: 9 }], 9],
  ['bites.0.t_s', 'bites', [{ t_s: -1, kind: 'tap' }], -1],
  ['line.leader.length_m', 'line.leader', { diameter_m: 0.0003, length_m: 0 }, 0],
  ['line.leader.knot_strength', 'line.leader', { ...LEADER, knot_strength: 1.2 }, 1.2],
  ['line.leader.breaking_load_N', 'line.leader', { ...LEADER, breaking_load_N: 0 }, 0],
  ['move.kind', 'move', { ...LIFT, kind: 'twitch' }, 'twitch'],
  ['move.duration_s', 'move', { ...LIFT, duration_s: 0 }, 0],
  ['move.moves', 'move', { kind: 'sequence', moves: [] }, []],
  ['move', 'move', { kind: 'tip_path', t_s: [0, 1], x_m: [1, 1], z_m: [1] }],
  ['move', 'move', { kind: 'tip_path', t_s: [0.5, 1], x_m: [1, 1], z_m: [1, 2] }],
  ['move.speed', 'move', { ...LIFT, speed: 3 }, 3],
  ['colour', 'colour', 'green'],
  ['water.salt', 'water.salt', 35]
];

/** The `n`-th of a seeded row; every field comes before one comes again. */
export function wrongScenario(n: number): WrongScenario {
  const good = anyScenario(n);
  const at = n % (FIELDS.length + TOGETHER.length);
  if (at >= FIELDS.length) {
    const [path, place, value, named = value] = TOGETHER[at - FIELDS.length];
    return { path, value: named, scenario: withValue(good, place, value) };
  }
  const [path, values] = FIELDS[at];
  const value = values[Math.floor(seededRandom(30_000 + n)() * values.length)];
  return { path, value, scenario: withValue(good, path, value) };
}

function withValue(scenario: ScenarioInput, path: string, value: unknown): unknown {
  const copy = structuredClone(scenario) as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop() ?? path;
  const owner = keys.reduce((here, key) => (here[key] ??= {}) as typeof copy, copy);
  owner[last] = value;
  return copy;
}
