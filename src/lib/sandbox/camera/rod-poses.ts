import {
  liftAngles,
  pairAngleFrom,
  StillTaker,
  sweepAngles,
  type Pixel,
  type RodView,
  type SweepPose,
  type TapePair,
  type ViewFault
} from '$lib/film';
import { FOOT_M } from '$lib/model';
import type { Plane } from '../rod-angles';
import * as words from './camera-words';
import { MOST_ROUGH_M } from './filmed-rod';

const SWEEP_POSE = { hold_s: 0.7, within: 10, apart: 12 } as const;
const LIFT_POSE = { hold_s: 0.7, within: 2.5, apart: 45 } as const;
const MARKS = words.SWEEP_MARKS_DEG.length;
/** Who has not met the marks in so many passes will not in the next. */
const MOST_PASSES = 3;

export interface PosedFor {
  readonly plane: Plane;
  readonly start_deg: number;
  readonly reach_m: number;
}

/** The rod held where it is asked to be, taken by itself, until a camera can tell its angles. */
export class RodPoses {
  #sweeps: SweepPose[] = [];
  #pairs: TapePair[] = [];
  #taker: StillTaker;

  constructor(private readonly task: PosedFor) {
    this.#taker = new StillTaker(task.plane === 'lift' ? LIFT_POSE : SWEEP_POSE);
  }

  /** What the rod is to do next. */
  get asks(): string {
    const isAgain = this.#sweeps.length > 0 && this.#sweeps.length % MARKS === 0;
    const pose = words.poseText(this.task.plane, this.#sweeps.length + this.#pairs.length);
    return isAgain ? `${words.ONCE_MORE} ${pose}` : pose;
  }

  interrupt(): void {
    this.#taker.interrupt();
  }

  /** The view, once the poses tell one; null while more of them are needed. */
  next(t_s: number, tapes: readonly Pixel[]): RodView | ViewFault | null {
    return this.task.plane === 'lift' ? this.#lift(t_s, tapes) : this.#sweep(t_s, tapes[0].x_px);
  }

  /** What a view reads an angle from. */
  readingOf([outer, inner]: readonly Pixel[]): number {
    if (this.task.plane === 'sweep') return outer.x_px;
    const level = this.#pairs[0] ?? { outer, inner };
    return pairAngleFrom({ outer, inner }, level.outer.x_px > level.inner.x_px);
  }

  #sweep(t_s: number, place_px: number): RodView | ViewFault | null {
    const u_px = this.#taker.next(t_s, place_px);
    if (u_px === null) return null;
    const azimuth_deg = words.SWEEP_MARKS_DEG[this.#sweeps.length % MARKS];
    this.#sweeps.push({ azimuth_deg, u_px });
    if (this.#sweeps.length % MARKS > 0) return null;
    const view = sweepAngles(this.#sweeps);
    const isLast = this.#sweeps.length === MOST_PASSES * MARKS;
    return typeof view === 'string' || isLast || tellsFoot(view, this.task) ? view : null;
  }

  #lift(t_s: number, tapes: readonly Pixel[]): RodView | ViewFault | null {
    if (this.#taker.next(t_s, this.readingOf(tapes)) === null) return null;
    const [outer, inner] = tapes;
    this.#pairs.push({ outer, inner });
    return this.#pairs.length === 2 ? liftAngles(this.#pairs[0], this.#pairs[1]) : null;
  }
}

/**
 * Whether a foot of tip from the task's start is told to the inch that a grade asks for. Of 400 made-up
 * rods 255 were after one pass over the marks, the others after two (docs/film.md).
 */
export function tellsFoot(view: RodView, { start_deg, reach_m }: PosedFor): boolean {
  const nearer = Math.cos((start_deg * Math.PI) / 180) - FOOT_M / reach_m;
  const to_deg = (Math.acos(Math.max(nearer, -1)) * 180) / Math.PI;
  return view.wayOff_m(start_deg, to_deg, reach_m) <= MOST_ROUGH_M;
}
