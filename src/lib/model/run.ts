import { ExternalLoads } from './external-loads';
import { liftsOf, type Lift } from './lifts';
import { LineState } from './line-state';
import { TICK_S } from './move';
import { RunRecord, type Summary, type Trace } from './record';
import type { Setup } from './scenario';
import { Strength } from './strength';
import { startOf, type Start } from './start';
import type { Point, TipPath } from './tip-path';
import { MODEL_VERSION } from './version';

/** A tick holds this many of the finest steps (78 µs); a step is 1, 2, 4, … of them. */
const FINEST_STEPS_A_TICK = 128;
/**
 * Steps this short (1.25 ms, in finest ones) follow what rod and bait do. Shorter ones are taken only where
 * a step changes a speed by more than SNAP_M_S: a metre of line that whirls a bait round turns by too much
 * for one round of Newton, and would pull by kilonewtons that nobody put in.
 */
const SHORT = 16;
const SNAP_M_S = 5;
/**
 * A step is taken again at half the length when it changes some node's speed by more than this, m/s.
 * Smaller is slower and more accurate; the bench prints both.
 */
const SPEED_CHANGE_LIMIT_M_S = 0.5;
/**
 * A whole tick in one step allows less: what is lost in a step goes with more than its length, and dry line
 * that comes tight by itself has waves of a few ticks. With as much as for shorter steps, sweeps that take up
 * slack are off by 1.3 % of their travel, and by a quarter of a pull of ten grams; npm run check:steps.
 */
const SPEED_CHANGE_A_TICK_M_S = 0.15;
/** Doubling a step doubles the change: only done when that stays well within what is allowed. */
const SHARE_TO_DOUBLE = 1 / 3;

/** Nobody winds on when this little line is left outside the tip, m (common practice, no source). */
const SHORTEST_LINE_M = 1;
/**
 * Pull at which the reel's clutch slips, N (common practice, no source: some 6 kgf). Without it a reel pulls
 * as hard as the line is stiff.
 */
const CLUTCH_N = 60;

/** A hook feels the line's direction over this length, m: that of a single piece depends on their number. */
const LEAD_M = 0.25;

/** Largest change of a speed with which a step of that size is kept, m/s. */
function limitFor(size: number): number {
  if (size === FINEST_STEPS_A_TICK) return SPEED_CHANGE_A_TICK_M_S;
  if (size > SHORT) return SPEED_CHANGE_LIMIT_M_S;
  return size > 1 ? SNAP_M_S : Infinity;
}

/** Whether the next step may be twice as long as one that changed speeds by so much, m/s. */
function mayDouble(size: number, change_m_s: number): boolean {
  if (size === FINEST_STEPS_A_TICK) return false;
  const limit = Math.min(limitFor(2 * size), SPEED_CHANGE_LIMIT_M_S);
  return change_m_s < SHARE_TO_DOUBLE * limit;
}

export interface Result extends Summary {
  trace: Trace;
  /** Flights higher than the bottom’s grain, as pictures, words and marks have them: nobody lays the bottom again. */
  lifts: Lift[];
  model: { version: string; segments: number; step_s: number };
}

/**
 * A run in progress. `simulate` and the practice water both go through here, tick by tick, so the
 * same rod input gives the same numbers to the last bit.
 */
export class Run {
  readonly record: RunRecord;
  private readonly parts: Start;
  private readonly saved: LineState;
  private readonly loads: ExternalLoads;
  private readonly strength: Strength;
  private readonly startLength_m: number;
  /** Line that a free spool or a slipping clutch has given, m. Read only. */
  given_m = 0;
  private readonly tip: Point = { x: 0, z: 0 };
  /** Length of the next step in finest steps. */
  private size = 4 * SHORT;
  private shortestStep_s = TICK_S;
  private ticks = 0;

  /**
   * Throws ScenarioError when the line cannot be laid.
   * @param laid the line, where it is laid already: for this run alone
   */
  constructor(
    readonly setup: Setup,
    private readonly path: TipPath,
    laid?: Start
  ) {
    path.at(0, this.tip);
    this.parts = laid ?? startOf(setup, this.tip);
    this.saved = new LineState(this.parts.solver.state.nodes);
    this.record = new RunRecord(this.parts.solver, this.parts.bottom, this.parts.bottom.stones);
    const { bait, line, solver, drawnIn_m } = this.parts;
    this.strength = new Strength(setup.line, line);
    const { x, nodes, isTouching } = solver.state;
    this.loads = new ExternalLoads(setup, bait.weightInWater_N, x[nodes - 1], isTouching);
    if (drawnIn_m !== 0) {
      const kind = drawnIn_m > 0 ? 'pulled in' : 'slid down';
      this.record.events.push({ t_s: 0, kind, by_m: Math.abs(drawnIn_m) });
    }
    this.startLength_m = this.parts.solver.pieceLength_m * setup.numerics.segments;
  }

  get time_s(): number {
    return this.ticks * TICK_S;
  }

  /** Nodes of the line from tip to bait, as they lie now. Read only. */
  get nodes(): Pick<LineState, 'x' | 'z'> {
    return this.parts.solver.state;
  }

  /** Pull of the line at the tip now, N. */
  get tipTension_N(): number {
    return this.parts.solver.tensionNow(0);
  }

  get isTouching(): boolean {
    const { contact } = this.record.trace;
    return contact[contact.length - 1] === 1;
  }

  /** Whether the bait has touched the bottom yet. */
  get hasTouched(): boolean {
    return this.loads.hasTouched;
  }

  /** Moves on by one tick. */
  tick(): void {
    const { step_s } = this.setup.numerics;
    if (step_s === undefined) this.tickFollowingMotion();
    else this.tickInEqualSteps(Math.ceil(TICK_S / step_s - 1e-9));
    this.ticks++;
    const { z, nodes } = this.parts.solver.state;
    if (!Number.isFinite(z[nodes - 1]))
      throw new Error(`The model lost the bait at ${this.time_s.toFixed(2)} s of a run.`);
    this.record.sample(this.time_s);
  }

  private tickInEqualSteps(steps: number): void {
    for (let i = 1; i <= steps; i++) this.step(i / steps, TICK_S / steps, Infinity);
  }

  private tickFollowingMotion(): void {
    for (let done = 0; done < FINEST_STEPS_A_TICK;) {
      let size = this.size;
      while (done % size !== 0) size /= 2;
      const share = size / FINEST_STEPS_A_TICK;
      const limit = limitFor(size);
      const change = this.step(done / FINEST_STEPS_A_TICK + share, share * TICK_S, limit);
      if (change > limit) {
        this.size = size / 2;
        continue;
      }
      done += size;
      this.size = mayDouble(size, change) ? 2 * size : size;
    }
  }

  /** One step to the given share of the tick; taken back if its change exceeds `limit`. */
  private step(share: number, step_s: number, limit_m_s: number): number {
    const { solver } = this.parts;
    const end_s = this.time_s + share * TICK_S;
    this.saved.copyFrom(solver.state);
    this.path.at(end_s, this.tip);
    this.reel(end_s, step_s);
    const { x, nodes } = solver.state;
    const isFree = this.setup.start.spool === 'free' && !this.loads.hasTouched;
    const load = this.loads.at(end_s, x[nodes - 1]);
    solver.step(step_s, this.tip, load, isFree);
    const change = solver.lastChange_m_s;
    if (change > limit_m_s) {
      solver.state.copyFrom(this.saved);
      return change;
    }
    // No shorter step is left to try, and lengths that were not found must not be given.
    if (isFree && change === Infinity) {
      solver.state.copyFrom(this.saved);
      this.reel(end_s, step_s);
      solver.step(step_s, this.tip, load);
    }
    this.given_m += isFree ? solver.spool.given_m : this.slipped_m();
    this.record.step(end_s, step_s);
    this.follow(end_s, step_s);
    this.shortestStep_s = Math.min(this.shortestStep_s, step_s);
    return change;
  }

  /** Lets fish, stems and snags answer to a step that was kept. */
  private follow(t_s: number, step_s: number): void {
    const { solver, bottom } = this.parts;
    const { x, z, nodes, isTouching } = solver.state;
    const n = nodes - 1;
    const events = this.loads.follow({
      t_s,
      step_s,
      x_m: x[n],
      height_m: z[n] - bottom.heightAt(x[n]),
      isTouching,
      contact: solver.touch.contact,
      baitPull_N: solver.tensionNow(n - 1),
      towardsLine: solver.leadOf(LEAD_M)
    });
    this.record.events.push(...events);
    this.giveWay(t_s);
  }

  private giveWay(t_s: number): void {
    const { solver } = this.parts;
    if (this.loads.isParted) return;
    const parted = this.strength.parting((piece) => solver.tensionNow(piece));
    if (!parted) return;
    solver.part(parted.piece);
    this.loads.isParted = true;
    this.record.events.push({ t_s, kind: 'break', at: parted.at });
  }

  /** Line that the reel's clutch lets slip after a step that left more pull than it holds, m. */
  private slipped_m(): number {
    const { solver, line } = this.parts;
    const over_N = solver.tensionNow(0) - CLUTCH_N;
    const length_m = solver.pieceLength_m * line.segments;
    return over_N > 0 ? (over_N * length_m) / line.axialStiffness_N[0] : 0;
  }

  /** Sets the length of line for a step. */
  private reel(end_s: number, step_s: number): void {
    const { solver } = this.parts;
    const taken = this.path.lineIn_m(end_s) - this.path.lineIn_m(end_s - step_s);
    const length_m = this.startLength_m + this.given_m - this.path.lineIn_m(end_s);
    solver.setLength(Math.max(length_m, SHORTEST_LINE_M), taken / step_s);
  }

  result(): Result {
    const { trace } = this.record;
    return {
      ...this.record.summary(),
      trace,
      lifts: liftsOf(trace, (x_m) => this.parts.bottom.heightAt(x_m)),
      model: {
        version: MODEL_VERSION,
        segments: this.setup.numerics.segments,
        step_s: this.shortestStep_s
      }
    };
  }
}
