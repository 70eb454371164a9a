import { parseSetup, tipPathOf, waterAt, type Move, type Result, type SetupInput } from '../model';
import { baitOf } from '../model/bait';
import { bottomOf } from '../model/bottom';

/** A run as the goals look at it: what the bait did, over which bottom, and what the reel did. */
export interface RunToGrade {
  readonly result: Result;
  /** Height of the bottom at `x_m`, stones included, m. */
  bottomAt(x_m: number): number;
  /** Line taken in by the reel up to `t_s`, m; negative is line given. */
  lineIn_m(t_s: number): number;
  /** When something bites in this water, s; null where nothing does. The run may be over by then. */
  readonly bite_s: number | null;
  /** When the hand was done while something could still have bitten, s; Infinity where it waited, or nothing could. */
  readonly left_s: number;
}

/**
 * `result` is what came of `move` in the water of `setup`.
 * @param bitesUntil_s until then something could bite, as far as who fishes it knows
 */
export function runToGrade(
  setup: SetupInput,
  move: Move,
  result: Result,
  bitesUntil_s = 0
): RunToGrade {
  const parsed = parseSetup(setup);
  const path = tipPathOf(parsed, move);
  const bottom = bottomOf(parsed, baitOf(parsed, waterAt(parsed.water.temperature_C)).radius_m);
  return {
    result,
    bottomAt: (x_m) => bottom.heightAt(x_m),
    lineIn_m: (t_s) => path.lineIn_m(t_s),
    bite_s: parsed.bites[0]?.t_s ?? null,
    left_s: path.duration_s < bitesUntil_s ? path.duration_s : Infinity
  };
}
