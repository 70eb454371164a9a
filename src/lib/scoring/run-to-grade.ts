import {
  contactOf,
  parseSetup,
  tipPathOf,
  waterAt,
  type Move,
  type Result,
  type Setup,
  type SetupInput
} from '../model';
import { baitOf } from '../model/bait';
import { bottomOf } from '../model/bottom';
import { contactWhileMoving } from './run-measures';

/** A run as the goals look at it: what the bait did, over which bottom, and what the reel did. */
export interface RunToGrade {
  readonly result: Result;
  /** Height of the bottom at `x_m`, stones included, m. */
  bottomAt(x_m: number): number;
  /** Line taken in by the reel up to `t_s`, m; negative is line given. */
  lineIn_m(t_s: number): number;
}

/** `result` is what came of `move` in the water of `setup`. */
export function runToGrade(setup: SetupInput, move: Move, result: Result): RunToGrade {
  const path = tipPathOf(parseSetup(setup), move);
  return { result, bottomAt: bottomUnder(setup), lineIn_m: (t_s) => path.lineIn_m(t_s) };
}

/** Height of the bottom that this water's bait can touch, stones included, m. */
export function bottomUnder(setup: SetupInput): RunToGrade['bottomAt'] {
  return bottomIn(parseSetup(setup));
}

/** The same of a scenario, or a setup that was parsed. */
export function bottomIn(setup: Setup): RunToGrade['bottomAt'] {
  const bottom = bottomOf(setup, baitOf(setup, waterAt(setup.water.temperature_C)).radius_m);
  return (x_m) => bottom.heightAt(x_m);
}

/** Share of its moving time that a run's bait was on the bottom, 0–1. */
export function contactIn(setup: Setup, result: Result): number {
  return contactWhileMoving(result, contactOf(result.trace, bottomIn(setup)));
}
