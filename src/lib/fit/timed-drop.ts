import {
  baitOf,
  fallSpeed,
  GRAVITY_M_S2,
  lineProperties,
  parseSetup,
  waterAt,
  type SetupInput
} from '../model';
import type { TimedDrop } from '../wire';

/**
 * Drag area from the time of a fall. From rest, with W the weight in water, m the mass with the water
 * set in motion and k = ½ρ CdA, m dv/dt = W − k v² gives v = u tanh(t/τ) and
 *
 *   distance = u τ ln cosh(t/τ),  u = √(W/k),  τ = m u / W,
 *
 * so the time is τ arcosh(exp(distance/(u τ))). The line is left out: a tub has none, and a pool hardly any.
 */
export function fallTime_s(setup: SetupInput, drag_area_m2: number, distance_m: number): number {
  const whole = parseSetup(setup);
  const water = waterAt(whole.water.temperature_C);
  const bait = baitOf(whole, water);
  const u = fallSpeed(bait.weightInWater_N, drag_area_m2, water.density_kg_m3);
  const tau_s = (bait.movingMass_kg * u) / bait.weightInWater_N;
  return tau_s * arcosh(distance_m / (u * tau_s));
}

/** The step of a fall with its line, s: a tenth of what a thumb scatters. */
const STEP_S = 0.01;
/** A jig that falls so long falls no more, s. */
const LONGEST_S = 300;

/**
 * The same with the line running off a free spool behind it. With s fallen, w the line's weight in water
 * and C its drag along itself, both a metre of it (½ρ C_t π d),
 *
 *   m dv/dt = W + w s − (k + C s) v²,
 *
 * in steps (Heun). The line's own mass, a hundredth of the jig's in deep water, and the spool's friction
 * are left out. Tied to the model's own fall in tests/fit/timed-drop.test.ts.
 */
export function lineFallTime_s(
  setup: SetupInput,
  drag_area_m2: number,
  distance_m: number
): number {
  const whole = parseSetup(setup);
  const water = waterAt(whole.water.temperature_C);
  const bait = baitOf(whole, water);
  const { diameter_m, density_kg_m3, tangential_drag } = lineProperties(whole.line);
  const half = 0.5 * water.density_kg_m3;
  const k = half * drag_area_m2;
  const c = half * tangential_drag * Math.PI * diameter_m;
  const area_m2 = (Math.PI * diameter_m ** 2) / 4;
  const w = (density_kg_m3 - water.density_kg_m3) * area_m2 * GRAVITY_M_S2;
  const slope = (s: number, v: number) =>
    (bait.weightInWater_N + w * s - (k + c * s) * v * Math.abs(v)) / bait.movingMass_kg;
  let [t, s, v] = [0, 0, 0];
  while (s < distance_m && t < LONGEST_S) {
    const first = slope(s, v);
    const second = slope(s + v * STEP_S, v + first * STEP_S);
    const by = ((first + second) / 2) * STEP_S;
    const moved = (v + by / 2) * STEP_S;
    if (s + moved >= distance_m) return t + (STEP_S * (distance_m - s)) / moved;
    [t, s, v] = [t + STEP_S, s + moved, v + by];
  }
  return t;
}

/** arcosh(eˣ), which overflows as it stands. */
function arcosh(x: number): number {
  return x + Math.log1p(Math.sqrt(-Math.expm1(-2 * x)));
}

/** The drag area of a dressed jig is known to a factor of two, 90 in 100 (docs/model.md): 0.42 = ln 2 / 1.645. */
export const DRAG_AREA_LOG_SD = 0.42;

/** A thumb on a stopwatch scatters so much from time to time, s (from memory, no source). */
const THUMB_SD_S = 0.1;
/** And is late at one end by so much more than at the other, however often it is timed, s. */
const ALWAYS_SD_S = 0.04;
/** So many drops the thumb's own scatter counts for beside that of those timed. */
const THUMB_WORTH = 3;
/** Half width of a 90 % interval of a normal prior. */
const Z90 = 1.6449;
/** Prior deviations looked at either way: 30 times and a 30th of the drag area. */
const FARTHEST = 8;

export interface DragArea {
  readonly estimate: number;
  /** Holds the drag area nine times in ten. */
  readonly interval90: readonly [number, number];
}

/**
 * The drag area of a bait of this setup that was timed as it fell: the best value with the prior of
 * docs/fit.md about the setup's own, and the interval over which the cost rises by 1.645². Drops of other
 * depths count together. Throws RangeError for none.
 */
export function dragAreaOf(setup: SetupInput, drops: readonly TimedDrop[]): DragArea {
  if (drops.length === 0) throw new RangeError('drops must not be empty');
  const middle_m2 = parseSetup(setup).bait.drag_area_m2;
  const timed = drops.map(({ distance_m, temperature_C, times_s, has_line }) => {
    const water = { ...setup.water, temperature_C };
    const fall_s = has_line ? lineFallTime_s : fallTime_s;
    const in_s = (area_m2: number) => fall_s({ ...setup, water }, area_m2, distance_m);
    return { in_s, ...meanOf(times_s) };
  });
  const at = (u: number) => middle_m2 * Math.exp(DRAG_AREA_LOG_SD * u);
  const cost = (u: number) =>
    timed.reduce(
      (sum, { in_s, mean_s, sd_s }) => sum + ((mean_s - in_s(at(u))) / sd_s) ** 2,
      u * u
    );
  const best = leastOf(cost, -FARTHEST, FARTHEST);
  const edge = (end: number) => edgeOf((u) => cost(u) - cost(best) - Z90 * Z90, best, end);
  return { estimate: at(best), interval90: [at(edge(-FARTHEST)), at(edge(FARTHEST))] };
}

function meanOf(times_s: readonly number[]): { mean_s: number; sd_s: number } {
  const count = times_s.length;
  const mean_s = times_s.reduce((sum, one) => sum + one, 0) / count;
  const squares = times_s.reduce((sum, one) => sum + (one - mean_s) ** 2, 0);
  const variance = (squares + THUMB_WORTH * THUMB_SD_S ** 2) / (count - 1 + THUMB_WORTH);
  return { mean_s, sd_s: Math.sqrt(variance / count + ALWAYS_SD_S ** 2) };
}

/** Of a function with one valley, by golden sections, to a thousandth of a deviation. */
function leastOf(cost: (u: number) => number, low: number, high: number): number {
  const part = (Math.sqrt(5) - 1) / 2;
  while (high - low > 1e-3) {
    const [a, b] = [high - part * (high - low), low + part * (high - low)];
    if (cost(a) < cost(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

/** Where it turns positive between the best and the end, halved to a thousandth. */
function edgeOf(rise: (u: number) => number, best: number, end: number): number {
  let [inside, outside] = [best, end];
  while (Math.abs(outside - inside) > 1e-3) {
    const middle = (inside + outside) / 2;
    if (rise(middle) > 0) outside = middle;
    else inside = middle;
  }
  return inside;
}
