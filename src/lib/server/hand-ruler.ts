import type { Challenge } from '../scoring';

/**
 * How a hand errs at a distance, in metres. Bias is the constant error, mean(x − T); spread is the
 * variable error, the standard deviation of x with 1/k (Henry 1974): apart, since a biased hand needs
 * a smaller number in mind and a spread hand needs slower practice.
 */
export interface HandRuler {
  target_m: number;
  band_m: number;
  bias_m: number;
  spread_m: number;
  tries: number;
}

/** Undefined spread and a bias of chance: fewer tries than this say nothing about a hand. */
const LEAST_TRIES = 3;

/** Null where the challenge asks for no distance, or the tries are too few to tell. */
export function rulerOf(challenge: Challenge, travels_m: readonly number[]): HandRuler | null {
  const goal = challenge.goals.find((one) => one.kind === 'travel');
  if (!goal || goal.kind !== 'travel' || travels_m.length < LEAST_TRIES) return null;
  return { target_m: goal.target_m, band_m: goal.band_m, ...errorsOf(travels_m, goal.target_m) };
}

/** Constant and variable error of some travels about a target, m. */
export function errorsOf(travels_m: readonly number[], target_m: number) {
  const k = travels_m.length;
  const mean = travels_m.reduce((sum, x) => sum + x, 0) / k;
  const variance = travels_m.reduce((sum, x) => sum + (x - mean) ** 2, 0) / k;
  return { bias_m: mean - target_m, spread_m: Math.sqrt(variance), tries: k };
}

export type Advice = 'shorter' | 'longer' | 'slower' | 'harder';

/** What to say to this hand next: bias first where it is the larger part of the error. */
export function adviceFor(ruler: HandRuler): Advice {
  const biased = Math.abs(ruler.bias_m) > ruler.band_m;
  if (biased && Math.abs(ruler.bias_m) >= ruler.spread_m) {
    return ruler.bias_m > 0 ? 'shorter' : 'longer';
  }
  return biased || ruler.spread_m > ruler.band_m ? 'slower' : 'harder';
}
