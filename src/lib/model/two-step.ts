import type { LineEquations } from './line-equations';
import type { LineState } from './line-state';

/**
 * The two-step backward differentiation formula for uneven steps (Hairer & Wanner, *Solving ODEs II*, V.1:
 * second order, L-stable): x = x̃ + γ v, v = ṽ + γ v̇, with r the ratio of this step to the last.
 */
export class TwoStep {
  readonly vxTilde: Float64Array;
  readonly vzTilde: Float64Array;

  constructor(nodes: number) {
    this.vxTilde = new Float64Array(nodes);
    this.vzTilde = new Float64Array(nodes);
  }

  static gamma(step_s: number, ratio: number): number {
    return (step_s * (1 + ratio)) / (1 + 2 * ratio);
  }

  /**
   * Puts ṽ, x̃ and the first guess of v (the speed now) in their places, and the state's "now" into
   * "before"; x̃ stands in the state's x and z until `advance`.
   */
  begin(state: LineState, eq: LineEquations, ratio: number): void {
    const { pvx, pvz } = eq;
    const { vxTilde, vzTilde } = this;
    const { x, z, vx, vz, xBefore, zBefore, vxBefore, vzBefore, nodes } = state;
    const b = (ratio * ratio) / (1 + 2 * ratio);
    for (let i = 0; i < nodes; i++) {
      pvx[i] = vx[i];
      pvz[i] = vz[i];
      vxTilde[i] = vx[i] + b * (vx[i] - vxBefore[i]);
      vzTilde[i] = vz[i] + b * (vz[i] - vzBefore[i]);
      vxBefore[i] = vx[i];
      vzBefore[i] = vz[i];
      const xNow = x[i];
      const zNow = z[i];
      x[i] += b * (xNow - xBefore[i]);
      z[i] += b * (zNow - zBefore[i]);
      xBefore[i] = xNow;
      zBefore[i] = zNow;
    }
  }

  /** Starts the equations with m/γ and −m (v̂ − ṽ)/γ. */
  linearise(state: LineState, eq: LineEquations, mass: Float64Array, gamma: number): void {
    const { px, pz, pvx, pvz, rx, rz, dxx, dxz, dzz } = eq;
    const { vxTilde, vzTilde } = this;
    const { x, z, nodes } = state;
    for (let i = 0; i < nodes; i++) {
      const inertia = mass[i] / gamma;
      rx[i] = inertia * (vxTilde[i] - pvx[i]);
      rz[i] = inertia * (vzTilde[i] - pvz[i]);
      dxx[i] = dzz[i] = inertia;
      dxz[i] = 0;
      px[i] = x[i] + gamma * pvx[i];
      pz[i] = z[i] + gamma * pvz[i];
    }
  }

  advance({ x, z, vx, vz, nodes }: LineState, { pvx, pvz }: LineEquations, gamma: number): void {
    for (let i = 0; i < nodes; i++) {
      vx[i] = pvx[i];
      vz[i] = pvz[i];
      x[i] += gamma * vx[i];
      z[i] += gamma * vz[i];
    }
  }
}
