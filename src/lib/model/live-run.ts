import type { RodInput } from './move';
import { ROD_RATE_HZ } from './move';
import { Run, TICK_S, type Result } from './run';
import type { Setup } from './scenario';
import { tipPathOf } from './tip-path';

/** Where a rod points: 0° elevation is level, 0° azimuth towards the bait. */
export interface RodAngles {
  elevation_deg: number;
  azimuth_deg: number;
}

/** Angles are kept to this, degrees, so that a recording is short and reads back exactly. */
const ANGLE_STEP_DEG = 0.01;

/** A try in the practice water: the hand gives one rod position a tick, the model follows. */
export class LiveRun {
  readonly run: Run;
  private readonly elevation_deg: number[];
  private readonly azimuth_deg: number[];

  /** Throws ScenarioError. */
  constructor(
    readonly setup: Setup,
    start: RodAngles
  ) {
    this.elevation_deg = [rounded(start.elevation_deg)];
    this.azimuth_deg = [rounded(start.azimuth_deg)];
    this.run = new Run(setup, tipPathOf(setup, this.input()));
  }

  /** The hand's next position; moves the model on by one tick (1/ROD_RATE_HZ s). */
  push({ elevation_deg, azimuth_deg }: RodAngles): void {
    this.elevation_deg.push(rounded(elevation_deg));
    this.azimuth_deg.push(rounded(azimuth_deg));
    this.run.tick();
  }

  /** The recording so far, which `simulate` turns into the same result. */
  input(): RodInput {
    return {
      kind: 'rod_input',
      rate_Hz: ROD_RATE_HZ,
      elevation_deg: this.elevation_deg,
      azimuth_deg: this.azimuth_deg
    };
  }

  /** Holds the rod still for `hold_s` more and closes the run. */
  finish(hold_s: number): Result {
    const end_s = this.elevation_deg.length / ROD_RATE_HZ + hold_s;
    while (this.run.time_s < end_s - 0.5 * TICK_S) this.run.tick();
    return this.run.result();
  }
}

function rounded(angle_deg: number): number {
  return Math.round(angle_deg / ANGLE_STEP_DEG) / Math.round(1 / ANGLE_STEP_DEG);
}
