import { airFactor } from './line-forces';
import type { Line } from './line';
import type { LineEquations } from './line-equations';

/**
 * How the wind's force on a piece changes as the piece turns. It is not symmetric between the piece's
 * ends, as the blocks of LineEquations must be, and in steps of a hundredth of a second it can be left
 * out; a relaxation that steps further needs it, or light line in wind finds no rest.
 *
 * At rest half a piece bears f = q |u_z| u_z (u_z, −u_x), q = the factor of addAir times |w| w, u its
 * direction; ∂u/∂d = (1 − u uᵀ)/length. A node is pulled by the halves on both its sides.
 */
export class LeaningAir {
  /** ∂f/∂(end − start) of each piece, row by row, N/m. */
  private readonly g: Float64Array;
  private readonly last: number;
  /** Upper off-diagonal block of each row times the inverse of its pivot, as elimination goes down. */
  private readonly u: Float64Array;

  constructor(private readonly eq: LineEquations) {
    this.last = eq.nodes - 1;
    this.g = new Float64Array(4 * eq.nodes);
    this.u = new Float64Array(4 * eq.nodes);
  }

  /** Takes the slopes where the equations were linearised. */
  take(line: Line, pieceLength_m: number, wind_m_s: number): void {
    const { px, pz, nx, nz, halfWet_m } = this.eq;
    const { g } = this;
    g.fill(0);
    for (let i = 0; i < this.last; i++) {
      const dry_m = pieceLength_m - 2 * halfWet_m[i];
      if (dry_m <= 0) continue;
      const q = airFactor(line, i, dry_m) * Math.abs(wind_m_s) * wind_m_s;
      const x = nx[i];
      const z = nz[i];
      const length = Math.max(Math.hypot(px[i + 1] - px[i], pz[i + 1] - pz[i]), 1e-9);
      const steep = (q * Math.abs(z)) / length;
      // Rows of ∂f/∂u times 1 − u uᵀ.
      const [a, b, c] = [3 * z, -z, -2 * x];
      g[4 * i] = steep * -a * x * z;
      g[4 * i + 1] = steep * a * x * x;
      g[4 * i + 2] = steep * (b * z * z - c * x * z);
      g[4 * i + 3] = steep * (c * x * x - b * x * z);
    }
  }

  /** Solves for every node from `first` to the one above the bait, which is held; leaves it in r. */
  solve(first: number, gamma: number): void {
    const { rx, rz, dxx, dxz, dzz, bxx, bxz, bzz } = this.eq;
    const { g, u, last } = this;
    for (let i = first; i < last; i++) {
      const above = 4 * (i - 1);
      const here = 4 * i;
      let a = dxx[i] + gamma * g[here];
      let b = dxz[i] + gamma * g[here + 1];
      let c = dxz[i] + gamma * g[here + 2];
      let d = dzz[i] + gamma * g[here + 3];
      if (i > first) {
        // Lower block: −(B − γ G) of the piece above.
        const la = gamma * g[above] - bxx[i - 1];
        const lb = gamma * g[above + 1] - bxz[i - 1];
        const lc = gamma * g[above + 2] - bxz[i - 1];
        const ld = gamma * g[above + 3] - bzz[i - 1];
        a -= la * u[above] + lb * u[above + 2];
        b -= la * u[above + 1] + lb * u[above + 3];
        c -= lc * u[above] + ld * u[above + 2];
        d -= lc * u[above + 1] + ld * u[above + 3];
        rx[i] -= la * rx[i - 1] + lb * rz[i - 1];
        rz[i] -= lc * rx[i - 1] + ld * rz[i - 1];
      }
      if (i > 0) {
        a -= gamma * g[above];
        b -= gamma * g[above + 1];
        c -= gamma * g[above + 2];
        d -= gamma * g[above + 3];
      }
      const det = 1 / (a * d - b * c);
      const ua = -bxx[i] - gamma * g[here];
      const ub = -bxz[i] - gamma * g[here + 1];
      const uc = -bxz[i] - gamma * g[here + 2];
      const ud = -bzz[i] - gamma * g[here + 3];
      u[here] = det * (d * ua - b * uc);
      u[here + 1] = det * (d * ub - b * ud);
      u[here + 2] = det * (a * uc - c * ua);
      u[here + 3] = det * (a * ud - c * ub);
      const x = rx[i];
      rx[i] = det * (d * x - b * rz[i]);
      rz[i] = det * (a * rz[i] - c * x);
    }
    rx[last] = rz[last] = 0;
    for (let i = last - 1; i >= first; i--) {
      const here = 4 * i;
      rx[i] -= u[here] * rx[i + 1] + u[here + 1] * rz[i + 1];
      rz[i] -= u[here + 2] * rx[i + 1] + u[here + 3] * rz[i + 1];
    }
  }
}
