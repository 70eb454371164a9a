/** A free spool has given enough when its line is stretched by less than this pull would, N, and this, m. */
const PAID_OUT_N = 1e-3;
const MOST_LEFT_TO_PAY_M = 1e-5;
const MOST_ROUNDS = 12;

/** A length tried for the pieces, and by how much the whole line is then drawn longer, m. */
interface Tried {
  piece_m: number;
  over_m: number;
}

/** What is known of the line that runs off: its pieces, and one's stiffness EA, N. */
interface Running {
  readonly piece_m: number;
  readonly segments: number;
  readonly axialStiffness_N: number;
}

/**
 * A spool that gives line for nothing, as much as a step draws from it: the length at which the step leaves
 * the line neither drawn nor slack, by regula falsi (Illinois; Dowell & Jarratt 1971). Paid out a step
 * late, line pulls the bait in by its stretch, and the stiffer it is the harder.
 */
export class FreeSpool {
  /** Line given in the last step, m, and how fast, m/s. */
  given_m = 0;
  pace_m_s = 0;

  /** `overdrawnAt` solves the step with pieces so long; how it was called last is how the step goes. */
  pay(line: Running, step_s: number, overdrawnAt: (piece_m: number) => number): void {
    const { segments } = line;
    const stretched_m = (PAID_OUT_N * line.piece_m * segments) / line.axialStiffness_N;
    const near_m = Math.min(stretched_m, MOST_LEFT_TO_PAY_M);
    let low: Tried | null = null;
    let high: Tried | null = null;
    // The last step's pace is a good guess of this one's.
    let piece_m = line.piece_m + (this.pace_m_s * step_s) / segments;
    for (let round = 1; ; round++) {
      const over_m = overdrawnAt(piece_m);
      const isEnough = over_m < 0 && piece_m === line.piece_m;
      if (Math.abs(over_m) <= near_m || isEnough || round === MOST_ROUNDS) break;
      if (over_m > 0) {
        low = { piece_m, over_m };
        if (high) high.over_m /= 2;
      } else {
        high = { piece_m, over_m };
        if (low) low.over_m /= 2;
      }
      piece_m =
        low && high
          ? between(low, high)
          : Math.max(line.piece_m, piece_m + (BEYOND * over_m) / segments);
    }
    this.given_m = (piece_m - line.piece_m) * segments;
    this.pace_m_s = this.given_m / step_s;
  }

  close(): void {
    this.given_m = this.pace_m_s = 0;
  }
}

/** Line drawn by so much takes somewhat more: the bait goes on once it is let go. */
const BEYOND = 1.5;

function between(low: Tried, high: Tried): number {
  return low.piece_m + ((high.piece_m - low.piece_m) * low.over_m) / (low.over_m - high.over_m);
}
