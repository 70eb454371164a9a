import { LineRecorder, type LineHistory } from './line-history';
import { ROD_RATE_HZ, TICK_S, type RodInput } from './move';
import type { RodAngles } from './rod-path';
import { Run, type Result } from './run';
import type { Setup } from './scenario';
import { layingOf, type Start } from './start';
import { tipPathOf } from './tip-path';

/** Angles are kept to this, degrees, so that a recording is short and reads back exactly. */
const ANGLE_STEP_DEG = 0.01;
/** The reel's line is kept to this, m. */
const LINE_STEP_M = 1e-4;

/** A try in the practice water: the hand gives one rod position a tick, the model follows. */
export class LiveRun {
  readonly run: Run;
  private readonly elevation_deg: number[];
  private readonly azimuth_deg: number[];
  private readonly line_in_m: number[] = [0];
  private readonly recorder: LineRecorder;
  private hasReeled = false;

  /** Throws ScenarioError. */
  constructor(
    readonly setup: Setup,
    start: RodAngles,
    laid?: Start
  ) {
    this.elevation_deg = [rounded(start.elevation_deg, ANGLE_STEP_DEG)];
    this.azimuth_deg = [rounded(start.azimuth_deg, ANGLE_STEP_DEG)];
    const { line_in_m } = this;
    this.run = new Run(setup, tipPathOf(setup, { ...this.input(), line_in_m }), laid);
    this.recorder = new LineRecorder(this.run.nodes.x.length);
    this.recorder.add(this.run.nodes);
  }

  /** One whose line is laid in pieces, between which a page may see to whoever touches it. */
  static *laidInPieces(setup: Setup, start: RodAngles): Generator<void, LiveRun> {
    const { elevation_deg, azimuth_deg } = start;
    const tip = { x: 0, z: 0 };
    const still: RodInput = {
      kind: 'rod_input',
      rate_Hz: ROD_RATE_HZ,
      elevation_deg: [rounded(elevation_deg, ANGLE_STEP_DEG)],
      azimuth_deg: [rounded(azimuth_deg, ANGLE_STEP_DEG)]
    };
    tipPathOf(setup, still).at(0, tip);
    return new LiveRun(setup, start, yield* layingOf(setup, tip));
  }

  /**
   * The hand's next position; moves the model on by one tick (1/ROD_RATE_HZ s). `line_in_m`: what the
   * reel has taken in since the start, negative given; without it the reel stands.
   */
  push({ elevation_deg, azimuth_deg }: RodAngles, line_in_m?: number): void {
    const reeled = line_in_m ?? this.line_in_m[this.line_in_m.length - 1];
    this.elevation_deg.push(rounded(elevation_deg, ANGLE_STEP_DEG));
    this.azimuth_deg.push(rounded(azimuth_deg, ANGLE_STEP_DEG));
    this.line_in_m.push(rounded(reeled, LINE_STEP_M));
    this.hasReeled ||= reeled !== 0;
    this.tick();
  }

  /** The recording so far, which `simulate` turns into the same result. */
  input(): RodInput {
    return {
      kind: 'rod_input',
      rate_Hz: ROD_RATE_HZ,
      elevation_deg: this.elevation_deg,
      azimuth_deg: this.azimuth_deg,
      ...(this.hasReeled ? { line_in_m: this.line_in_m } : {})
    };
  }

  /** Holds the rod still for `hold_s` more and closes the run. */
  finish(hold_s: number): { result: Result; line: LineHistory } {
    const end_s = this.elevation_deg.length / ROD_RATE_HZ + hold_s;
    while (this.run.time_s < end_s - 0.5 * TICK_S) this.tick();
    return { result: this.run.result(), line: this.recorder.history() };
  }

  private tick(): void {
    this.run.tick();
    this.recorder.add(this.run.nodes);
  }
}

function rounded(value: number, step: number): number {
  return Math.round(value / step) / Math.round(1 / step);
}
