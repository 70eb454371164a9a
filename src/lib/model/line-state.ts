import type { RestingLine } from './equilibrium';
import type { Point } from './tip-path';

/** Positions and speeds of the nodes, tip (0) to bait (last), now and one step ago. */
export class LineState {
  readonly x: Float64Array;
  readonly z: Float64Array;
  readonly vx: Float64Array;
  readonly vz: Float64Array;
  readonly xBefore: Float64Array;
  readonly zBefore: Float64Array;
  readonly vxBefore: Float64Array;
  readonly vzBefore: Float64Array;
  /** Length of the step that led from before to now, s. */
  lastStep_s = 1e-3;
  /** Whether the bait was held up by the bottom in the last step. */
  isTouching = true;
  /** How long the bait has lain still, s. */
  rest_s = Infinity;
  /** Where the stiff rod's tip was at the end of the last step. */
  readonly tip: Point = { x: 0, z: 0 };

  /** The eight lists in a row: a step saves them all, in one copy. */
  private readonly all: Float64Array;

  constructor(readonly nodes: number) {
    this.all = new Float64Array(8 * nodes);
    const list = (nth: number) => this.all.subarray(nth * nodes, (nth + 1) * nodes);
    this.x = list(0);
    this.z = list(1);
    this.vx = list(2);
    this.vz = list(3);
    this.xBefore = list(4);
    this.zBefore = list(5);
    this.vxBefore = list(6);
    this.vzBefore = list(7);
  }

  static atRest(line: Pick<RestingLine, 'x_m' | 'z_m'>, tip: Point): LineState {
    const state = new LineState(line.x_m.length);
    Object.assign(state.tip, tip);
    state.x.set(line.x_m);
    state.z.set(line.z_m);
    state.xBefore.set(line.x_m);
    state.zBefore.set(line.z_m);
    return state;
  }

  copyFrom(other: LineState): void {
    this.all.set(other.all);
    this.lastStep_s = other.lastStep_s;
    this.isTouching = other.isTouching;
    this.rest_s = other.rest_s;
    this.tip.x = other.tip.x;
    this.tip.z = other.tip.z;
  }

  /** Forgets all speeds: what lies so is at rest. */
  stop(): void {
    this.xBefore.set(this.x);
    this.zBefore.set(this.z);
    for (const speed of [this.vx, this.vz, this.vxBefore, this.vzBefore]) speed.fill(0);
  }
}
