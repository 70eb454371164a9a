import type { Move, Result, Setup } from '../model';
import type { Challenge } from './challenge';

/** The move that would have done it, found by running the model backwards. */
export interface Correction {
  /** How far to move the tip, m (see tipTravel). */
  tipTravel_m: number;
  /** Give or take, m: what unknown slack and drag area make of it. */
  band_m: number;
  /** At least so long, s: any slower does it too. */
  duration_s: number;
  move: Move;
  result: Result;
}

/**
 * Finds the sweep or lift that meets the challenge's goals in its own water, or in `setup`.
 * Null where no single move can.
 */
export function solveCorrection(_challenge: Challenge, _setup?: Setup): Correction | null {
  return null;
}
