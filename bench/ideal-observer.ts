import type { Range } from './hands';

/**
 * What nobody can beat who has only the tries: an observer that knows from which hands they come, with every range
 * that they are drawn from, and says the middle of the likeliest window. Bayes' rule on a grid.
 */
export interface Population {
  bias: Range;
  noise: Range;
  /** How the hands of each kind may come to their level: how far off at try `i` of which `last` is the last. */
  kinds: readonly (readonly ((i: number, last: number) => number)[])[];
}

/** Steps of the grids: twice as fine moves the share by less than one hand in five hundred. */
const BIAS_STEP = 0.01;
const NOISE_STEPS = 12;

/** Level of the hand, as a part of what it means, nearest to most of what may have made these ratios. */
export function idealLevel(
  ratios: readonly number[],
  { bias, noise, kinds }: Population,
  near: number
): number {
  const cells = Math.round((bias[1] - bias[0]) / BIAS_STEP) + 1;
  const mass = new Float64Array(cells);
  for (const courses of kinds) {
    for (const away of courses) addMass(mass, ratios, away, bias[0], noise, 1 / courses.length);
  }
  return 1 + bias[0] + BIAS_STEP * middleOfWindow(mass, Math.round(near / BIAS_STEP));
}

/** Adds to each bias how likely it makes the ratios, over all noises evenly. */
function addMass(
  mass: Float64Array,
  ratios: readonly number[],
  away: (i: number, last: number) => number,
  least: number,
  noise: Range,
  weight: number
): void {
  const n = ratios.length;
  const levels = ratios.map((ratio, i) => ratio - 1 - away(i, n - 1));
  const mean = levels.reduce((sum, level) => sum + level, 0) / n;
  const spread = levels.reduce((sum, level) => sum + (level - mean) ** 2, 0);
  for (let k = 0; k < NOISE_STEPS; k++) {
    const sd = noise[0] + ((noise[1] - noise[0]) * (k + 0.5)) / NOISE_STEPS;
    const top = (weight * Math.exp(-spread / (2 * sd * sd))) / sd ** n;
    for (let cell = 0; cell < mass.length; cell++) {
      const off = least + cell * BIAS_STEP - mean;
      mass[cell] += top * Math.exp((-n * off * off) / (2 * sd * sd));
    }
  }
}

/** The cell about which `reach` cells to each side hold most. */
function middleOfWindow(mass: Float64Array, reach: number): number {
  let [best, most] = [0, -1];
  for (let middle = 0; middle < mass.length; middle++) {
    let sum = 0;
    const to = Math.min(mass.length - 1, middle + reach);
    for (let cell = Math.max(0, middle - reach); cell <= to; cell++) sum += mass[cell];
    if (sum > most) [best, most] = [middle, sum];
  }
  return best;
}
