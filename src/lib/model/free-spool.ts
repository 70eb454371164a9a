import type { LineEquations } from './line-equations';

/** A free spool has given enough when its line is stretched by less than this pull would, N, and this, m. */
const PAID_OUT_N = 1e-3;
const MOST_LEFT_TO_PAY_M = 1e-5;

/**
 * A spool that gives line for nothing, as much as a step draws from it: the length at which the step leaves
 * the line neither drawn nor slack. Paid out a step late, line pulls the bait in by its stretch, and the
 * stiffer it is the harder. The length l of a piece is one more unknown of the step's Newton rounds, with
 * one more equation, Σ|piece| = N l: a bordered system, A Δv = r + s Δl, whose second right side s is what
 * length takes from the pulls (Golub & Van Loan, *Matrix Computations*, block elimination; from memory).
 */
export class FreeSpool {
  /** Line given in the last step, m, and how fast, m/s. */
  given_m = 0;
  pace_m_s = 0;
  /** Length of a piece when the step began, m: less than this it will not be, a spool takes nothing back. */
  private had_m = 0;
  private near_m = 0;

  /** Begins a step; returns the first guess of a piece's length, from the last step's pace, m. */
  begin(piece_m: number, segments: number, axialStiffness_N: number, step_s: number): number {
    const stretched_m = (PAID_OUT_N * piece_m * segments) / axialStiffness_N;
    this.near_m = Math.min(stretched_m, MOST_LEFT_TO_PAY_M);
    this.had_m = piece_m;
    return piece_m + (this.pace_m_s * step_s) / segments;
  }

  /** With A⁻¹ r and A⁻¹ s in the two right sides: how much longer a piece has to be, m; r gets its share. */
  lengthen(eq: LineEquations, piece_m: number, gamma: number): number {
    const { px, pz, nx, nz, rx, rz, sx, sz } = eq;
    const pieces = eq.nodes - 1;
    let over_m = -piece_m * pieces;
    let perLength = -pieces;
    for (let i = 0; i < pieces; i++) {
      const j = i + 1;
      const dx = px[j] - px[i] + gamma * (rx[j] - rx[i]);
      const dz = pz[j] - pz[i] + gamma * (rz[j] - rz[i]);
      over_m += Math.sqrt(dx * dx + dz * dz);
      perLength += gamma * ((sx[j] - sx[i]) * nx[i] + (sz[j] - sz[i]) * nz[i]);
    }
    const longer_m = Math.max(-over_m / perLength, this.had_m - piece_m);
    for (let i = 0; i <= pieces; i++) {
      rx[i] += longer_m * sx[i];
      rz[i] += longer_m * sz[i];
    }
    return longer_m;
  }

  /** Whether a line `over_m` longer than it is by itself has been given enough. */
  isPaid(over_m: number, piece_m: number): boolean {
    return Math.abs(over_m) <= this.near_m || (over_m < 0 && piece_m === this.had_m);
  }

  end(piece_m: number, segments: number, step_s: number): void {
    this.given_m = (piece_m - this.had_m) * segments;
    this.pace_m_s = this.given_m / step_s;
  }

  close(): void {
    this.given_m = this.pace_m_s = 0;
  }
}
