import type { Bite } from './bite';
import { GROUND, type Bottom } from './bottom';
import { isOffBottom, REST_SPEED_M_S, riseOver } from './lift-off';
import type { LineSolver } from './line-solver';
import type { SnagEvent } from './snag';
import type { BreakPlace } from './strength';

/** One flight of the bait off the bottom (see isOffBottom). */
export interface Hop {
  /** When it left the bottom, s after the start of the move. */
  t_s: number;
  /** Horizontal distance flown, m, positive towards the angler. */
  length_m: number;
  /** Highest above the bottom below it and above where it left it, m: to fall off a ledge is no height. */
  height_m: number;
  duration_s: number;
}

export type RunEvent = { t_s: number } & (
  | SnagEvent
  | { kind: 'bottom' | 'stem slips' }
  | { kind: 'break'; at: BreakPlace }
  /** Before anything moved the line at rest drew the bait in, or steep ground let it down, by so far, m. */
  | { kind: 'pulled in' | 'slid down'; by_m: number }
  | { kind: 'stone'; stone: number }
  | { kind: 'bite'; bite: Bite['kind'] }
);

/** What happened, sampled at every tick. Same length in every list. */
export interface Trace {
  t_s: number[];
  tip_x_m: number[];
  tip_z_m: number[];
  bait_x_m: number[];
  bait_z_m: number[];
  tip_tension_N: number[];
  bait_tension_N: number[];
  /** 1 on the bottom, 0 clear of it. */
  contact: (0 | 1)[];
}

export interface Summary {
  travel_m: number;
  peak_height_m: number;
  contact_fraction: number;
  airborne_s: number;
  peak_tip_tension_N: number;
  hops: Hop[];
  /** What else befell the bait, in the order of time. */
  events: RunEvent[];
  stones: { index: number; touched: boolean }[];
}

/** Closer than this to the bottom counts as on it, m: rounding, and less than a grain of sand. */
const CONTACT_TOLERANCE_M = 1e-4;

/** Follows a run step by step, so that no peak falls between two samples. */
export class RunRecord {
  readonly trace: Trace = {
    t_s: [],
    tip_x_m: [],
    tip_z_m: [],
    bait_x_m: [],
    bait_z_m: [],
    tip_tension_N: [],
    bait_tension_N: [],
    contact: []
  };
  private readonly towardsAngler: number;
  private readonly startX_m: number;
  private readonly touched: boolean[];
  private readonly hops: Hop[] = [];
  readonly events: RunEvent[] = [];
  private flight: Hop | null = null;
  private flightStartX_m = 0;
  /** Where the bait last lay on the bottom, m; before it ever did, heights count from the bottom alone. */
  private takeOffZ_m = -Infinity;
  private peakHeight_m = 0;
  private peakTension_N = 0;
  private airborne_s = 0;
  private airborneToRest_s = 0;
  private rest_s = 0;
  private lastStone = GROUND;
  private isTouching: boolean;

  constructor(
    private readonly solver: LineSolver,
    private readonly bottom: Bottom,
    stones: number
  ) {
    const { x, nodes } = solver.state;
    this.isTouching = solver.state.isTouching;
    if (this.isTouching) this.takeOffZ_m = solver.state.z[nodes - 1];
    this.startX_m = x[nodes - 1];
    this.towardsAngler = -Math.sign(this.startX_m);
    this.touched = new Array<boolean>(stones).fill(false);
    this.peakTension_N = solver.tensionNow(0);
    this.sample(0);
  }

  /** Notes the step that ended at `t_s`. */
  step(t_s: number, step_s: number): void {
    const { state, touch } = this.solver;
    const n = state.nodes - 1;
    const x = state.x[n];
    const clearance = touch.contact ? 0 : state.z[n] - this.bottom.heightAt(x);
    this.isTouching = clearance < CONTACT_TOLERANCE_M;
    this.noteStone(t_s);
    this.peakTension_N = Math.max(this.peakTension_N, this.solver.tensionNow(0));
    const rise = riseOver(clearance, state.z[n], this.takeOffZ_m);
    this.peakHeight_m = Math.max(this.peakHeight_m, rise);
    if (this.isTouching) this.takeOffZ_m = state.z[n] - clearance;
    if (!this.isTouching) this.airborne_s += step_s;
    this.follow(t_s, x, rise);
    if (!this.isTouching || Math.hypot(state.vx[n], state.vz[n]) > REST_SPEED_M_S) {
      this.rest_s = t_s;
      this.airborneToRest_s = this.airborne_s;
    }
  }

  private noteStone(t_s: number): void {
    const stone = this.solver.touch.contact?.stone ?? GROUND;
    if (stone !== GROUND) {
      this.touched[stone] = true;
      if (stone !== this.lastStone) this.events.push({ t_s, kind: 'stone', stone });
    }
    this.lastStone = stone;
  }

  private follow(t_s: number, x_m: number, rise_m: number): void {
    if (!this.isTouching && !this.flight) {
      this.flight = { t_s, length_m: 0, height_m: 0, duration_s: 0 };
      this.flightStartX_m = x_m;
    }
    if (!this.flight) return;
    this.flight.height_m = Math.max(this.flight.height_m, rise_m);
    this.flight.length_m = this.towardsAngler * (x_m - this.flightStartX_m);
    this.flight.duration_s = t_s - this.flight.t_s;
    if (!this.isTouching) return;
    if (isOffBottom(this.flight.height_m)) this.hops.push(this.flight);
    this.flight = null;
  }

  /** Adds a row to the trace. */
  sample(t_s: number): void {
    const { trace, solver } = this;
    const { x, z, nodes } = solver.state;
    trace.t_s.push(t_s);
    trace.tip_x_m.push(x[0]);
    trace.tip_z_m.push(z[0]);
    trace.bait_x_m.push(x[nodes - 1]);
    trace.bait_z_m.push(z[nodes - 1]);
    trace.tip_tension_N.push(solver.tensionNow(0));
    trace.bait_tension_N.push(solver.tensionNow(nodes - 2));
    trace.contact.push(this.isTouching ? 1 : 0);
  }

  summary(): Summary {
    const { x, nodes } = this.solver.state;
    const flight = this.flight && isOffBottom(this.flight.height_m) ? [this.flight] : [];
    return {
      // Adding zero turns −0 into 0.
      travel_m: this.towardsAngler * (x[nodes - 1] - this.startX_m) + 0,
      peak_height_m: this.peakHeight_m,
      contact_fraction: this.rest_s > 0 ? 1 - this.airborneToRest_s / this.rest_s : 1,
      airborne_s: this.airborne_s,
      peak_tip_tension_N: this.peakTension_N,
      events: [...this.events],
      hops: [...this.hops, ...flight].map((hop) => ({ ...hop })),
      stones: this.touched.map((touched, index) => ({ index, touched }))
    };
  }
}
