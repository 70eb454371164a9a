import { errorScores, travelOf } from '../practice';
import type { Challenge } from '../scoring';
import type { HandAdvice, HandRuler } from '../wire';

/** Undefined spread and a bias of chance: fewer tries than this say nothing about a hand. */
const LEAST_TRIES = 3;
/** So few that miss on both sides are no hand yet: one of them makes the average. */
const CLEAR_TRIES = 6;

/** Null where the challenge asks for no distance, or the tries are too few to tell. */
export function handRulerOf(challenge: Challenge, travels_m: readonly number[]): HandRuler | null {
  const goal = travelOf(challenge);
  if (!goal || travels_m.length < LEAST_TRIES) return null;
  const { target_m, band_m } = goal;
  const short = travels_m.filter((travel_m) => travel_m < target_m - band_m).length;
  const far = travels_m.filter((travel_m) => travel_m > target_m + band_m).length;
  return { target_m, band_m, ...errorsOf(travels_m, target_m), short, far };
}

/** Constant and variable error of some travels about a target, m. Throws RangeError for none. */
export function errorsOf(travels_m: readonly number[], target_m: number) {
  const { constant, variable, count } = errorScores(travels_m.map((x) => x - target_m));
  return { bias_m: constant, spread_m: variable, tries: count };
}

/** What to say to this hand next: bias first where it is the larger part of the error. */
export function adviceFor(ruler: HandRuler): HandAdvice {
  if (ruler.tries < CLEAR_TRIES && ruler.short > 0 && ruler.far > 0) return 'unclear';
  const biased = Math.abs(ruler.bias_m) > ruler.band_m;
  if (biased && Math.abs(ruler.bias_m) >= ruler.spread_m) {
    return ruler.bias_m > 0 ? 'shorter' : 'longer';
  }
  return biased || ruler.spread_m > ruler.band_m ? 'slower' : 'harder';
}
