import { hasBedFlipped, hasSlackFlipped, wholeLengthAtEnd } from './active-set';
import type { Bait } from './bait';
import type { Touch } from './bait-contact';
import { settleBait } from './bait-history';
import { BaitStep } from './bait-step';
import type { Bottom } from './bottom';
import { NO_LOAD, type ExternalLoad } from './external-load';
import { FreeSpool } from './free-spool';
import { LineEquations } from './line-equations';
import {
  addAir,
  addBait,
  addBed,
  addLengthening,
  addLineDrag,
  addPieces,
  addRodTip,
  addSettling
} from './line-forces';
import { meanWeights, pullOf, type Line } from './line';
import type { LineState } from './line-state';
import type { Point } from './tip-path';
import { TwoStep } from './two-step';

/** Null: the tip goes exactly where the stiff rod puts it. */
export type RodBend = { stiffness_N_m: number; damping_N_s_m: number } | null;

/** Rounds of Newton's method a step may take; a step that needs more is too long. */
const MOST_ROUNDS = 8;
/** The same while line runs off, whose length is an unknown too. */
const MOST_ROUNDS_PAYING = 12;

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
export class LineSolver {
  /** Largest change of a speed in the last step, m/s (Infinity: it did not settle). */
  lastChange_m_s = 0;
  readonly touch: Touch;
  readonly spool = new FreeSpool();
  /** Damping of every node against the ground, N·s/m: none but while a start comes to rest. */
  settling_N_s_m = 0;
  private readonly eq: LineEquations;
  private readonly time: TwoStep;
  private readonly baitStep: BaitStep;
  private readonly mass: Float64Array;
  /** First node that is not given: the tip if the rod bends. */
  private readonly first: number;
  private readonly tipSpeed: Point = { x: 0, z: 0 };
  /** Load of the step on the bait. */
  private load: ExternalLoad = NO_LOAD;
  /** Speed at which line comes in over the tip, m/s. */
  private reel_m_s = 0;

  constructor(
    readonly state: LineState,
    private readonly line: Line,
    private readonly bait: Bait,
    private readonly bottom: Bottom,
    private readonly rod: RodBend,
    public pieceLength_m: number,
    private readonly wind_m_s = 0
  ) {
    const { nodes } = state;
    this.eq = new LineEquations(nodes);
    this.time = new TwoStep(nodes);
    this.baitStep = new BaitStep(bait, bottom);
    this.touch = this.baitStep.touch;
    this.first = rod ? 0 : 1;
    this.mass = new Float64Array(nodes);
    this.weigh();
  }

  /** Unstretched length of the whole line for the coming steps, m, and how fast it is getting less. */
  setLength(length_m: number, reel_m_s: number): void {
    this.reel_m_s = reel_m_s;
    this.setPieces(length_m / this.line.segments);
  }

  private setPieces(piece_m: number): void {
    if (piece_m === this.pieceLength_m) return;
    this.pieceLength_m = piece_m;
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

  /** A piece parts: it pulls no more. */
  part(piece: number): void {
    this.line.axialStiffness_N[piece] = 0;
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
    const { state, eq, time, baitStep } = this;
    this.load = load;
    const ratio = step_s / state.lastStep_s;
    const gamma = TwoStep.gamma(step_s, ratio);
    baitStep.planeAhead(state, ratio);
    time.begin(state, eq, ratio);
    this.placeTip(step_s, gamma, tip);
    if (isSpoolFree) this.payOut(step_s, gamma, tip);
    else {
      this.spool.close();
      this.solve(gamma, tip);
    }
    time.advance(state, eq, gamma);
    settleBait(state, this.touch, step_s);
    state.lastStep_s = step_s;
  }

  /** Rounds of Newton's method, until slack and bed are as they were taken to be. */
  private solve(gamma: number, tip: Point): void {
    this.lastChange_m_s = this.solveOnce(gamma, tip, false);
    for (let round = 1; this.hasFlipped(gamma); round++) {
      if (round === MOST_ROUNDS) {
        this.lastChange_m_s = Infinity;
        return;
      }
      this.solveOnce(gamma, tip, false);
    }
  }

  /** As `solve`, with the length of the pieces among the unknowns. */
  private payOut(step_s: number, gamma: number, tip: Point): void {
    const { spool, eq, state } = this;
    const { segments, axialStiffness_N } = this.line;
    this.setPieces(spool.begin(this.pieceLength_m, segments, axialStiffness_N[0], step_s));
    this.lastChange_m_s = this.solveOnce(gamma, tip, true);
    for (let round = 1; ; round++) {
      const over_m = wholeLengthAtEnd(eq, state, gamma) - this.pieceLength_m * segments;
      if (spool.isPaid(over_m, this.pieceLength_m) && !this.hasFlipped(gamma)) break;
      if (round === MOST_ROUNDS_PAYING) {
        this.lastChange_m_s = Infinity;
        break;
      }
      this.solveOnce(gamma, tip, true);
    }
    spool.end(this.pieceLength_m, segments, step_s);
  }

  private hasFlipped(gamma: number): boolean {
    const { eq, state, line, bottom, pieceLength_m } = this;
    return (
      hasSlackFlipped(eq, state, line, pieceLength_m, gamma) ||
      hasBedFlipped(eq, state, bottom, gamma)
    );
  }

  /** One round of Newton's method; returns the largest change of a speed, m/s. */
  private solveOnce(gamma: number, tip: Point, isSpoolFree: boolean): number {
    const { eq, baitStep, state } = this;
    this.time.linearise(state, eq, this.mass, gamma);
    if (this.rod) addRodTip(eq, this.rod, tip, this.tipSpeed, gamma);
    addPieces(eq, this.line, this.pieceLength_m, gamma);
    addLineDrag(eq, this.line, this.reel_m_s - this.spool.pace_m_s);
    addAir(eq, this.line, this.pieceLength_m, this.wind_m_s);
    addBed(eq, this.bottom, this.pieceLength_m, gamma);
    addBait(eq, this.bait, this.load, gamma);
    eq.rx[eq.nodes - 1] += baitStep.lift.x;
    eq.rz[eq.nodes - 1] += baitStep.lift.z;
    if (this.settling_N_s_m > 0) addSettling(eq, this.settling_N_s_m);
    eq.eliminate(this.first);
    baitStep.solve(eq, gamma, this.load.isPinned, state.rest_s);
    eq.substitute(this.first, eq.rx, eq.rz);
    if (isSpoolFree) this.lengthen(gamma);
    return this.correct();
  }

  /** Finds the length of the pieces that goes with the speeds, and what it changes of them. */
  private lengthen(gamma: number): void {
    const { eq, first, touch } = this;
    addLengthening(eq, this.line, this.pieceLength_m);
    eq.eliminateSecond(first);
    this.baitStep.solveSecond(eq);
    eq.substitute(first, eq.sx, eq.sz);
    if (first === 1) eq.rx[0] = eq.rz[0] = eq.sx[0] = eq.sz[0] = 0;
    const longer_m = this.spool.lengthen(eq, this.pieceLength_m, gamma);
    touch.vx += longer_m * eq.sx[eq.nodes - 1];
    touch.vz += longer_m * eq.sz[eq.nodes - 1];
    this.setPieces(this.pieceLength_m + longer_m);
  }

  /** Pull in piece `i` as the line lies now, N. */
  tensionNow(i: number): number {
    const { x, z } = this.state;
    const dx = x[i + 1] - x[i];
    const dz = z[i + 1] - z[i];
    // Not Math.hypot, which is several times as slow: this is asked some four times a step.
    const length = Math.sqrt(dx * dx + dz * dz);
    return pullOf(this.line, i, length, this.pieceLength_m);
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
}
