import type { Move, Result } from '../model';
import type { Challenge } from './challenge';
import { isOfOneTurn } from './goals';

/** A person counts no finer than this, s. */
export const BEAT_S = 0.5;

/** The move that would have done it, found by running the model backwards. */
export interface Correction {
  /** How far to move the tip, m (see tipTravel). */
  tipTravel_m: number;
  /** Give or take, m: what unknown slack, drag area and planing make of it. */
  band_m: number;
  /** The shortest time that does it, s, a multiple of half a second. */
  duration_s: number;
  /** Whether any slower does it too; with slack in the line a slow pull sinks it away and drags less. */
  isSlowToo: boolean;
  move: Move;
  result: Result;
}

/** A move must also do it this much quicker: a hand that means to take two seconds is at times so quick. */
export const QUICK_PACE = 0.9;

/** Whether its goals ask for more than one turn of the rod. */
export function needsSeveralMoves({ goals }: Pick<Challenge, 'goals'>): boolean {
  return goals.some((one) => !isOfOneTurn(one));
}
