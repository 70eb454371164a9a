import type { Bait } from './bait';
import { settleBait } from './bait-history';
import { pin, touchBottom, type Matrix2, type Touch } from './bait-contact';
import type { Bottom, Contact } from './bottom';
import { NO_LOAD, type ExternalLoad } from './external-load';
import { FreeSpool } from './free-spool';
import { LineEquations } from './line-equations';
import {
  addAir,
  addBait,
  addBed,
  addLineDrag,
  addPieces,
  addRodTip,
  addSettling
} from './line-forces';
import { meanWeights, pullOf, type Line } from './line';
import type { LineState } from './line-state';
import { planingForce } from './planing';
import type { Point } from './tip-path';

/** Null: the tip goes exactly where the stiff rod puts it. */
export type RodBend = { stiffness_N_m: number; damping_N_s_m: number } | null;

/**
 * Steps line and bait through time.
 *
 * The line is lumped into nodes joined by pieces that only pull. For node i with mass m,
 *   m v̇ = T₊ n₊ − T₋ n₋ + weight − C(v·n̂) n̂ − D |v·t̂| t̂ + bottom,
 * T = EA (length/l − 1) or zero, n̂ and t̂ across and along the line. Time: the two-step backward
 * differentiation formula for uneven steps (Hairer & Wanner, *Solving ODEs II*, V.1: second order,
 * L-stable), x = x̃ + γ v, v = ṽ + γ v̇, solved by Newton's method about a guess v̂:
 *   (m/γ + γ K + D) (v − v̂) = F(x̃ + γ v̂, v̂) − m (v̂ − ṽ)/γ,
 * with K and D the derivatives of the pulls by place and of the drags by speed. One round is enough
 * (its error is of the order of the formula's) unless pieces turned slack or taut. The matrix is
 * block-tridiagonal; eliminating from the tip down leaves one block for the bait, where the contact
 * is solved exactly (bait-contact.ts).
 */
/** Pieces whose pull was taken for slack, or slack for pull, by more than this are solved again, N. */
const SLACK_TOLERANCE_N = 0.01;
/** Nodes taken for clear of the bottom, or for borne by it, are solved again when off by more, m. */
const BED_TOLERANCE_M = 2e-5;
/** Time in which a soft bottom has closed over a resting bait to 63 %, s (common practice, no source). */
const SINKING_IN_S = 2;
/** Rounds of Newton's method a step may take; a step that needs more is too long. */
const MOST_ROUNDS = 8;

export class LineSolver {
  /** Largest change of a speed in the last step, m/s (Infinity: it did not settle). */
  lastChange_m_s = 0;
  readonly touch: Touch = { vx: 0, vz: 0, fx: 0, fz: 0, isStuck: true, contact: null };
  private readonly eq: LineEquations;
  private readonly mass: Float64Array;
  private readonly vxTilde: Float64Array;
  private readonly vzTilde: Float64Array;
  /** First node that is not given: the tip if the rod bends. */
  private readonly first: number;
  private readonly contacts: Contact[] = [];
  private readonly block: Matrix2 = { xx: 0, xz: 0, zz: 0 };
  private readonly tipSpeed: Point = { x: 0, z: 0 };
  private readonly grip: { friction: number; hold_N: number; plough_N: number };
  /** Planing force of the step, N, at the speed the bait is heading for. */
  private readonly lift: Point = { x: 0, z: 0 };
  /** Load of the step on the bait. */
  private load: ExternalLoad = NO_LOAD;
  /** Damping of every node against the ground, N·s/m: none but while a start comes to rest. */
  settling_N_s_m = 0;
  /** Speed at which line comes in over the tip, m/s. */
  private reel_m_s = 0;
  readonly spool = new FreeSpool();

  constructor(
    readonly state: LineState,
    private readonly line: Line,
    private readonly bait: Bait,
    private readonly bottom: Bottom,
    private readonly rod: RodBend,
    public pieceLength_m: number,
    private readonly wind_m_s = 0
  ) {
    const nodes = state.nodes;
    this.eq = new LineEquations(nodes);
    this.first = rod ? 0 : 1;
    this.grip = { friction: bottom.friction, hold_N: 0, plough_N: bottom.plough_N };
    this.mass = new Float64Array(nodes);
    this.vxTilde = new Float64Array(nodes);
    this.vzTilde = new Float64Array(nodes);
    this.weigh();
  }

  /** Unstretched length of the whole line for the coming steps, m, and how fast it is getting less. */
  setLength(length_m: number, reel_m_s: number): void {
    const piece = length_m / this.line.segments;
    this.reel_m_s = reel_m_s;
    if (piece === this.pieceLength_m) return;
    this.pieceLength_m = piece;
    this.weigh();
  }

  /** Mean weight in air of what a node stands for, N. */
  get nodeWeight_N(): number {
    return meanWeights(this.line).inAir_N_m * this.pieceLength_m;
  }

  /** From the bait to the place on the line that is `length_m` from it. */
  leadOf(length_m: number): Point {
    const { x, z, nodes } = this.state;
    const n = nodes - 1;
    const pieces = Math.min(length_m / this.pieceLength_m, n);
    const i = n - Math.ceil(pieces);
    const share = Math.ceil(pieces) - pieces;
    return {
      x: x[i] + share * (x[i + 1] - x[i]) - x[n],
      z: z[i] + share * (z[i + 1] - z[i]) - z[n]
    };
  }

  /** The knot at the bait parts. */
  breakOff(): void {
    this.line.axialStiffness_N[this.line.segments - 1] = 0;
  }

  /** Half of each neighbouring piece's mass goes to a node, the bait's to the last. */
  private weigh(): void {
    const { mass, pieceLength_m } = this;
    const { massPerLength_kg_m, segments } = this.line;
    const half = 0.5 * pieceLength_m;
    mass.fill(0);
    for (let i = 0; i < segments; i++) {
      mass[i] += half * massPerLength_kg_m[i];
      mass[i + 1] += half * massPerLength_kg_m[i];
    }
    mass[segments] += this.bait.movingMass_kg;
  }

  /**
   * Moves everything on by `step_s`; `tip` is where the stiff rod's tip is at the end of the step. A free
   * spool gives what line the step draws; then the pieces are longer after it.
   */
  step(step_s: number, tip: Point, load: ExternalLoad = NO_LOAD, isSpoolFree = false): void {
    const { state, touch } = this;
    this.load = load;
    const ratio = step_s / state.lastStep_s;
    const gamma = (step_s * (1 + ratio)) / (1 + 2 * ratio);
    this.planeAhead(ratio);
    this.startFrom(ratio);
    this.placeTip(step_s, gamma, tip);
    if (isSpoolFree) this.payOut(step_s, gamma, tip);
    else {
      this.spool.close();
      this.solve(gamma, tip);
    }
    this.advance(gamma);
    settleBait(state, touch, step_s);
    state.lastStep_s = step_s;
  }

  /** Rounds of Newton's method, until slack and bed are as they were taken to be. */
  private solve(gamma: number, tip: Point): void {
    this.lastChange_m_s = this.solveOnce(gamma, tip);
    for (let round = 1; this.hasSlackFlipped(gamma) || this.hasBedFlipped(gamma); round++) {
      if (round === MOST_ROUNDS) {
        this.lastChange_m_s = Infinity;
        return;
      }
      this.solveOnce(gamma, tip);
    }
  }

  private payOut(step_s: number, gamma: number, tip: Point): void {
    const { segments, axialStiffness_N } = this.line;
    const running = {
      piece_m: this.pieceLength_m,
      segments,
      axialStiffness_N: axialStiffness_N[0]
    };
    this.spool.pay(running, step_s, (piece_m) => this.overdrawnAt(piece_m, gamma, tip));
  }

  /** By how much the line is drawn longer than it is when the step is solved with pieces so long, m. */
  private overdrawnAt(piece_m: number, gamma: number, tip: Point): number {
    this.pieceLength_m = piece_m;
    this.weigh();
    this.solve(gamma, tip);
    const { pvx, pvz } = this.eq;
    const { x, z, nodes } = this.state;
    let sum = 0;
    for (let i = 0; i < nodes - 1; i++) {
      const dx = x[i + 1] - x[i] + gamma * (pvx[i + 1] - pvx[i]);
      const dz = z[i + 1] - z[i] + gamma * (pvz[i + 1] - pvz[i]);
      sum += Math.sqrt(dx * dx + dz * dz);
    }
    return sum - piece_m * this.line.segments;
  }

  /** One round of Newton's method; returns the largest change of a speed, m/s. */
  private solveOnce(gamma: number, tip: Point): number {
    const { eq } = this;
    this.linearise(gamma);
    if (this.rod) addRodTip(eq, this.rod, tip, this.tipSpeed, gamma);
    addPieces(eq, this.line, this.pieceLength_m, gamma);
    addLineDrag(eq, this.line, this.reel_m_s - this.spool.pace_m_s);
    addAir(eq, this.line, this.pieceLength_m, this.wind_m_s);
    addBed(eq, this.bottom, this.pieceLength_m, gamma);
    addBait(eq, this.bait, this.load, gamma);
    eq.rx[eq.nodes - 1] += this.lift.x;
    eq.rz[eq.nodes - 1] += this.lift.z;
    if (this.settling_N_s_m > 0) addSettling(eq, this.settling_N_s_m);
    eq.eliminate(this.first);
    this.solveBait(gamma);
    eq.substitute(this.first);
    return this.correct();
  }

  /**
   * Whether a piece linearised as slack came out pulling, or the other way. One that tightens within
   * the step would otherwise pull a step late, from a stretch it never had, and so make energy.
   */
  private hasSlackFlipped(gamma: number): boolean {
    const { pvx, pvz, isTaut } = this.eq;
    const { x, z, nodes } = this.state;
    const length = this.pieceLength_m;
    const { axialStiffness_N } = this.line;
    for (let i = 0; i < nodes - 1; i++) {
      const dx = x[i + 1] - x[i] + gamma * (pvx[i + 1] - pvx[i]);
      const dz = z[i + 1] - z[i] + gamma * (pvz[i + 1] - pvz[i]);
      const stretch = Math.sqrt(dx * dx + dz * dz) - length;
      const tolerance = (SLACK_TOLERANCE_N * length) / axialStiffness_N[i];
      if (isTaut[i] === 1 ? stretch < -tolerance : stretch > tolerance) return true;
    }
    return false;
  }

  /**
   * Whether a node linearised as clear of the bottom came out in it, or one that was borne out of it.
   * One that lands within the step would otherwise be thrown back up by the next.
   */
  private hasBedFlipped(gamma: number): boolean {
    const { pvx, pvz, isBorne, bait } = this.eq;
    const { x, z, nodes } = this.state;
    const { highest_m } = this.bottom;
    for (let i = 1; i < nodes - 1; i++) {
      const now_z = z[i] + gamma * pvz[i];
      if (isBorne[i] === 0 && now_z >= highest_m) continue;
      const depth = this.bottom.evenedBedAt(x[i] + gamma * pvx[i], bait) - now_z;
      if (isBorne[i] === 1 ? depth < -BED_TOLERANCE_M : depth > BED_TOLERANCE_M) return true;
    }
    return false;
  }

  /** Pull in piece `i` as the line lies now, N. */
  tensionNow(i: number): number {
    const { x, z } = this.state;
    const length = Math.hypot(x[i + 1] - x[i], z[i + 1] - z[i]);
    return pullOf(this.line, i, length, this.pieceLength_m);
  }

  /**
   * Puts ṽ, x̃ and the first guess of v (the speed now) in their places, and the state's "now" into
   * "before"; x̃ stands in the state's x and z until `advance`.
   */
  private startFrom(ratio: number): void {
    const { pvx, pvz } = this.eq;
    const { vxTilde, vzTilde } = this;
    const { x, z, vx, vz, xBefore, zBefore, vxBefore, vzBefore, nodes } = this.state;
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

  /**
   * Planing is not symmetric in the speeds, as the blocks must be, so it is taken at the speed
   * extrapolated to the end of the step: second order, as the formula is (an IMEX scheme; Ascher, Ruuth
   * & Wetton 1995, SIAM J. Numer. Anal. 32, from memory), and far too weak to become unstable.
   */
  private planeAhead(ratio: number): void {
    const { state, bait, lift } = this;
    const n = state.nodes - 1;
    lift.x = lift.z = 0;
    if (bait.liftToDrag === 0 || state.z[n] >= 0) return;
    const vx = state.vx[n] + ratio * (state.vx[n] - state.vxBefore[n]);
    const vz = state.vz[n] + ratio * (state.vz[n] - state.vzBefore[n]);
    planingForce(bait, vx, vz, lift);
  }

  private placeTip(step_s: number, gamma: number, tip: Point): void {
    const { eq, state, tipSpeed } = this;
    if (this.rod) {
      tipSpeed.x = (tip.x - state.tip.x) / step_s;
      tipSpeed.z = (tip.z - state.tip.z) / step_s;
    } else {
      eq.pvx[0] = (tip.x - state.x[0]) / gamma;
      eq.pvz[0] = (tip.z - state.z[0]) / gamma;
    }
    state.tip.x = tip.x;
    state.tip.z = tip.z;
  }

  /** Starts the equations with m/γ and −m (v̂ − ṽ)/γ. */
  private linearise(gamma: number): void {
    const { px, pz, pvx, pvz, rx, rz, dxx, dxz, dzz } = this.eq;
    const { vxTilde, vzTilde, mass } = this;
    const { x, z, nodes } = this.state;
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

  /** Leaves v − v̂ of the bait in the right side. */
  private solveBait(gamma: number): void {
    const { eq, block, contacts, touch } = this;
    const n = eq.nodes - 1;
    block.xx = eq.dxx[n];
    block.xz = eq.dxz[n];
    block.zz = eq.dzz[n];
    const vxHat = eq.pvx[n];
    const vzHat = eq.pvz[n];
    const rx = eq.rx[n] + block.xx * vxHat + block.xz * vzHat;
    const rz = eq.rz[n] + block.xz * vxHat + block.zz * vzHat;
    if (this.load.isPinned) {
      pin(rx, rz, touch);
    } else {
      this.bottom.contactsNear(eq.px[n], eq.pz[n], contacts);
      // The gap was taken at x̃ + γ v̂; bring it to x̃, which is where v starts from.
      for (const c of contacts) c.gap_m -= gamma * (c.nx * vxHat + c.nz * vzHat);
      this.grip.hold_N = this.holdNow();
      touchBottom(block, rx, rz, contacts, gamma, this.grip, touch);
    }
    eq.rx[n] = touch.vx - vxHat;
    eq.rz[n] = touch.vz - vzHat;
  }

  /** A soft bottom closes over a bait that lies still. */
  private holdNow(): number {
    const { breakout_N } = this.bottom;
    return breakout_N === 0 ? 0 : breakout_N * (1 - Math.exp(-this.state.rest_s / SINKING_IN_S));
  }

  /** Adds the solution to v̂. */
  private correct(): number {
    const { rx, rz, pvx, pvz } = this.eq;
    let largest = 0;
    for (let i = this.first; i < this.eq.nodes; i++) {
      pvx[i] += rx[i];
      pvz[i] += rz[i];
      largest = Math.max(largest, Math.abs(rx[i]), Math.abs(rz[i]));
    }
    return largest;
  }

  private advance(gamma: number): void {
    const { pvx, pvz } = this.eq;
    const { x, z, vx, vz, nodes } = this.state;
    for (let i = 0; i < nodes; i++) {
      vx[i] = pvx[i];
      vz[i] = pvz[i];
      x[i] += gamma * vx[i];
      z[i] += gamma * vz[i];
    }
  }
}
