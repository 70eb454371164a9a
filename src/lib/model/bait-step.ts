import type { Bait } from './bait';
import { pin, touchBottom, type Matrix2, type Touch } from './bait-contact';
import type { Bottom, Contact } from './bottom';
import type { LineEquations } from './line-equations';
import type { LineState } from './line-state';
import { planingForce } from './planing';
import type { Point } from './tip-path';

/** Time in which a soft bottom has closed over a resting bait to 63 %, s (common practice, no source). */
const SINKING_IN_S = 2;

/** The bait's part of a step: the block that elimination leaves, with the bottom's force. */
export class BaitStep {
  readonly touch: Touch = { vx: 0, vz: 0, fx: 0, fz: 0, isStuck: true, contact: null };
  /** Planing force of the step, N, at the speed the bait is heading for. */
  readonly lift: Point = { x: 0, z: 0 };
  private readonly contacts: Contact[] = [];
  private readonly block: Matrix2 = { xx: 0, xz: 0, zz: 0 };
  private readonly grip: { friction: number; hold_N: number; plough_N: number };

  constructor(
    private readonly bait: Bait,
    private readonly bottom: Bottom
  ) {
    this.grip = { friction: bottom.friction, hold_N: 0, plough_N: bottom.plough_N };
  }

  /**
   * Planing is not symmetric in the speeds, as the blocks must be, so it is taken at the speed
   * extrapolated to the end of the step: second order, as the formula is (an IMEX scheme; Ascher, Ruuth
   * & Wetton 1995, SIAM J. Numer. Anal. 32, from memory), and far too weak to become unstable.
   */
  planeAhead(state: LineState, ratio: number): void {
    const { bait, lift } = this;
    const n = state.nodes - 1;
    lift.x = lift.z = 0;
    if (bait.liftToDrag === 0 || state.z[n] >= 0) return;
    const vx = state.vx[n] + ratio * (state.vx[n] - state.vxBefore[n]);
    const vz = state.vz[n] + ratio * (state.vz[n] - state.vzBefore[n]);
    planingForce(bait, vx, vz, lift);
  }

  /** Leaves v − v̂ of the bait in the right side. A soft bottom closes over one that lay still for `rest_s`. */
  solve(eq: LineEquations, gamma: number, isPinned: boolean, rest_s: number): void {
    const { block, contacts, touch } = this;
    const n = eq.nodes - 1;
    block.xx = eq.dxx[n];
    block.xz = eq.dxz[n];
    block.zz = eq.dzz[n];
    const vxHat = eq.pvx[n];
    const vzHat = eq.pvz[n];
    const rx = eq.rx[n] + block.xx * vxHat + block.xz * vzHat;
    const rz = eq.rz[n] + block.xz * vxHat + block.zz * vzHat;
    if (isPinned) {
      pin(rx, rz, touch);
    } else {
      this.bottom.contactsNear(eq.px[n], eq.pz[n], contacts);
      // The gap was taken at x̃ + γ v̂; bring it to x̃, which is where v starts from.
      for (const c of contacts) c.gap_m -= gamma * (c.nx * vxHat + c.nz * vzHat);
      this.grip.hold_N = this.holdAfter(rest_s);
      touchBottom(block, rx, rz, contacts, gamma, this.grip, touch);
    }
    eq.rx[n] = touch.vx - vxHat;
    eq.rz[n] = touch.vz - vzHat;
  }

  /** The second right side's: S⁻¹ s where the bait is free, nothing where something holds it. */
  solveSecond({ sx, sz, nodes }: LineEquations): void {
    const { xx, xz, zz } = this.block;
    const n = nodes - 1;
    const share = this.touch.contact ? 0 : 1 / (xx * zz - xz * xz);
    const x = share * (zz * sx[n] - xz * sz[n]);
    sz[n] = share * (xx * sz[n] - xz * sx[n]);
    sx[n] = x;
  }

  private holdAfter(rest_s: number): number {
    const { breakout_N } = this.bottom;
    return breakout_N === 0 ? 0 : breakout_N * (1 - Math.exp(-rest_s / SINKING_IN_S));
  }
}
