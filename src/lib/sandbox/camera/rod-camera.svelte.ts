import {
  liftAngles,
  OneEuro,
  pairAngleFrom,
  StillTaker,
  sweepAngles,
  type Pixel,
  type RodView,
  type SweepPose,
  type TapePair
} from '$lib/film';
import { recordScenario, type RodAngles, type Setup } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { Try } from '../live-try';
import { movedAngle, type Plane } from '../rod-angles';
import { cameraFrames } from './camera-frames';
import * as words from './camera-words';
import {
  filmedInput,
  fromStart,
  MOST_ROUGH_M,
  roughness_m,
  STILL_BAIT_M,
  stillTravel_m
} from './filmed-rod';
import { CameraFault, closeCamera, openCamera } from './open-camera';
import { TapeReader } from './tape-reader';

/** What the camera's rod is to be the rod of. */
export interface FilmedTask {
  readonly setup: Setup;
  readonly plane: Plane;
  readonly start: RodAngles;
  readonly hold_s: number;
}

/** The session it moves. */
export interface FilmedSession {
  readonly phase: 'ready' | 'moving' | 'guessing' | 'showing';
  units: Units;
  isFilmed: boolean;
  retake: ((live: Try) => Try | null) | null;
  tilt(t_ms: number, turned_deg: number): void;
  next(): void;
}

export type CameraPhase = 'off' | 'tap' | 'pose' | 'bring' | 'still' | 'ready' | 'moving';

/** The rod is taken up this near to where the task has it, degrees. */
const NEAR_DEG = 3;
/** Then it may settle, and is held still for so long before it counts, s. */
const SETTLE_S = 0.6;
const STILL_S = 2;
/** A rod that moves more has begun its move, degrees. */
const BEGUN_DEG = 1.5;
/** Stays in the recording before the move, s. */
const LEAD_S = 0.5;
/** A rod that strays less for so long has ended it. */
const ENDED = { hold_s: 1.3, within: 2, apart: 0 } as const;
const SWEEP_POSE = { hold_s: 0.7, within: 10, apart: 12 } as const;
const LIFT_POSE = { hold_s: 0.7, within: 2.5, apart: 45 } as const;
/** A frame without the tape for longer spoils a move, s. */
const LONGEST_GAP_S = 0.15;

/** One's own rod as the rod: a camera and tape. */
export class RodCamera {
  phase = $state<CameraPhase>('off');
  says = $state('');
  stream = $state.raw<MediaStream | null>(null);
  shown = $state.raw<TapeReader['shown']>([]);
  task: FilmedTask | null = null;
  #reader = new TapeReader(1);
  #stop: AbortController | null = null;
  #poses: SweepPose[] = [];
  #pairs: TapePair[] = [];
  #taker = new StillTaker(SWEEP_POSE);
  #ended = new StillTaker(ENDED);
  #view: RodView | null = null;
  #eye = new OneEuro();
  #t_s: number[] = [];
  #angle_deg: number[] = [];
  #heldAt_deg = 0;
  #still = { travel_m: 0, seconds: STILL_S };
  #seen_s = 0;
  /** Why there was no grade: stays before what is to be done until the rod is taken up again. */
  #complaint = '';

  constructor(private readonly session: FilmedSession) {}

  async open(video: () => HTMLVideoElement | undefined): Promise<void> {
    try {
      this.stream = await openCamera(window);
    } catch (error) {
      if (!(error instanceof CameraFault)) throw error;
      this.says = error.message;
      return;
    }
    this.session.isFilmed = true;
    this.session.retake = (live) => this.#retake(live);
    this.#reader = new TapeReader(this.task?.plane === 'lift' ? 2 : 1);
    this.phase = 'tap';
    this.says = this.task?.plane === 'lift' ? 'Tap the outer tape, near the tip.' : 'Tap the tape.';
    this.#stop = new AbortController();
    const player = video() ?? document.createElement('video');
    void this.#watch(this.stream, player, this.#stop.signal);
  }

  close(): void {
    this.#stop?.abort();
    closeCamera(this.stream);
    this.stream = null;
    this.phase = 'off';
    this.session.isFilmed = false;
    this.session.retake = null;
  }

  /** A tap on the picture, in shares of it. */
  tap(across: number, down: number): void {
    const fault = this.#reader.teach(across, down);
    if (fault) this.says = words.tapeFaultText(fault);
    else this.calibrate();
  }

  /** Over the poses again. */
  calibrate(): void {
    const isLift = this.task?.plane === 'lift';
    this.#poses = [];
    this.#pairs = [];
    this.#taker = new StillTaker(isLift ? LIFT_POSE : SWEEP_POSE);
    this.phase = 'pose';
    this.#askPose();
  }

  /** The line is laid anew: the rod has to come to its start, and be still, again. */
  putDown(): void {
    if (this.phase === 'ready' || this.phase === 'moving' || this.phase === 'still') {
      this.phase = 'bring';
    }
  }

  async #watch(stream: MediaStream, video: HTMLVideoElement, signal: AbortSignal): Promise<void> {
    const { width = 16, height = 9 } = stream.getVideoTracks()[0]?.getSettings() ?? {};
    for await (const { t_ms, picture } of cameraFrames(stream, video, signal)) {
      if (signal.aborted) return;
      this.#reader.take(picture, height / width);
      if (this.#reader.isTaught) this.#look(t_ms);
    }
  }

  #look(t_ms: number): void {
    const tapes = this.#reader.read();
    this.shown = this.#reader.shown;
    if (tapes) {
      this.#seen_s = t_ms / 1000;
      this.#see(t_ms, tapes);
    } else this.#miss(t_ms / 1000);
  }

  #miss(t_s: number): void {
    this.#taker.interrupt();
    if (t_s - this.#seen_s < LONGEST_GAP_S) return;
    if (this.phase === 'moving') {
      this.#recordAnew();
      this.#complaint = words.LOST;
      this.session.next();
    } else if (this.phase !== 'tap') {
      this.putDown();
      this.says = words.OUT_OF_SIGHT;
    }
  }

  #see(t_ms: number, tapes: readonly Pixel[]): void {
    if (this.phase === 'pose') return this.#pose(t_ms / 1000, tapes);
    const angle_deg = this.#angleOf(tapes);
    if (angle_deg === null || !this.task) return this.#miss(t_ms / 1000);
    if (this.phase === 'bring') this.#bring(angle_deg);
    else if (this.phase === 'still') this.#hold(t_ms / 1000, angle_deg);
    else if (this.phase === 'ready' || this.phase === 'moving') this.#move(t_ms, angle_deg);
  }

  #angleOf(tapes: readonly Pixel[]): number | null {
    if (this.task?.plane === 'sweep') return this.#view?.angleAt(tapes[0].x_px) ?? null;
    const shown = pairAngleFrom({ outer: tapes[0], inner: tapes[1] }, this.#pointsRight);
    return this.#view?.angleAt(shown) ?? null;
  }

  get #pointsRight(): boolean {
    const level = this.#pairs[0];
    return !level || level.outer.x_px > level.inner.x_px;
  }

  #pose(t_s: number, tapes: readonly Pixel[]): void {
    if (this.task?.plane === 'lift') return this.#liftPose(t_s, tapes);
    const u_px = this.#taker.next(t_s, tapes[0].x_px);
    if (u_px === null) return;
    const azimuth_deg = words.SWEEP_MARKS_DEG[this.#poses.length % words.SWEEP_MARKS_DEG.length];
    this.#poses.push({ azimuth_deg, u_px });
    if (this.#poses.length % words.SWEEP_MARKS_DEG.length === 0)
      this.#fit(sweepAngles(this.#poses));
    else this.#askPose();
  }

  #liftPose(t_s: number, [outer, inner]: readonly Pixel[]): void {
    const pair = { outer, inner };
    const shown = pairAngleFrom(
      pair,
      this.#pairs.length > 0 ? this.#pointsRight : outer.x_px > inner.x_px
    );
    if (this.#taker.next(t_s, shown) === null) return;
    this.#pairs.push(pair);
    if (this.#pairs.length === 2) this.#fit(liftAngles(this.#pairs[0], this.#pairs[1]));
    else this.#askPose();
  }

  #askPose(): void {
    this.says = words.poseText(
      this.task?.plane ?? 'sweep',
      this.#poses.length + this.#pairs.length
    );
  }

  #fit(view: ReturnType<typeof sweepAngles>): void {
    if (typeof view === 'string') {
      this.calibrate();
      this.says = `${words.viewFaultText(view, this.task?.plane ?? 'sweep')} ${this.says}`;
      return;
    }
    this.#view = view;
    this.phase = 'bring';
  }

  #bring(angle_deg: number): void {
    if (this.session.phase !== 'ready') return;
    const away_deg = this.#start_deg - angle_deg;
    if (Math.abs(away_deg) > NEAR_DEG) {
      this.#say(words.bringRodText(away_deg, this.task?.plane ?? 'sweep'));
      return;
    }
    this.#recordAnew();
    this.phase = 'still';
    this.#say(words.HOLD_STILL);
  }

  #say(text: string): void {
    this.says = this.#complaint ? `${this.#complaint} ${text}` : text;
  }

  get #start_deg(): number {
    return this.task ? this.task.start[movedAngle(this.task.plane)] : 0;
  }

  #recordAnew(): void {
    this.#t_s = [];
    this.#angle_deg = [];
  }

  #record(t_s: number, angle_deg: number): void {
    if (t_s <= (this.#t_s.at(-1) ?? -Infinity)) return;
    this.#t_s.push(t_s);
    this.#angle_deg.push(angle_deg);
  }

  #hold(t_s: number, angle_deg: number): void {
    const { task } = this;
    if (!task) return;
    if (Math.abs(angle_deg - this.#start_deg) > 2 * NEAR_DEG) return this.putDown();
    this.#record(t_s, angle_deg);
    if (t_s - this.#t_s[0] < SETTLE_S + STILL_S) return;
    this.#trim(t_s, STILL_S);
    const { setup, plane, start } = task;
    const travel_m = stillTravel_m(setup, this.#recording(), plane, start);
    this.#heldAt_deg = this.#angle_deg.reduce((sum, one) => sum + one, 0) / this.#angle_deg.length;
    this.#still = { travel_m, seconds: STILL_S };
    this.#recordAnew();
    if (travel_m >= STILL_BAIT_M) {
      this.phase = 'bring';
      this.#complaint = words.unsteadyText(travel_m, this.session.units);
      return;
    }
    this.#eye = new OneEuro();
    this.#ended = new StillTaker(ENDED);
    this.phase = 'ready';
    this.#complaint = '';
    this.says = words.READY;
  }

  #recording() {
    return { t_s: this.#t_s, angle_deg: this.#angle_deg };
  }

  #move(t_ms: number, angle_deg: number): void {
    const t_s = t_ms / 1000;
    this.#record(t_s, angle_deg);
    const shown_deg = fromStart(this.#eye.next(t_s, angle_deg), this.#heldAt_deg, this.#start_deg);
    const turned_deg = shown_deg - this.#start_deg;
    if (this.phase === 'ready' && Math.abs(turned_deg) < BEGUN_DEG) return this.#trim(t_s, LEAD_S);
    this.phase = 'moving';
    this.session.tilt(t_ms, turned_deg);
    const isOver = this.#ended.next(t_s, angle_deg) !== null;
    if (isOver && this.session.phase === 'moving') this.session.next();
  }

  /** Waiting is no part of the move. */
  #trim(t_s: number, keep_s: number): void {
    while (this.#t_s.length > 2 && t_s - this.#t_s[1] > keep_s) {
      this.#t_s.shift();
      this.#angle_deg.shift();
    }
  }

  /** The try that counts: the film's, without its jitter, in place of the live one. */
  #retake(live: Try): Try | null {
    const { task } = this;
    const view = this.#view;
    // Keys and buttons go on working: what the camera did not see is theirs.
    if (!task || !view || this.phase !== 'moving') return live;
    this.phase = 'bring';
    // It was lost on the way.
    if (this.#t_s.length < 3) return null;
    const { setup, plane, start, hold_s } = task;
    const recording = this.#recording();
    const rough_m = roughness_m(view, recording, setup.rod.length_m, this.#still);
    if (rough_m > MOST_ROUGH_M) {
      this.#complaint = words.roughText(rough_m, this.session.units);
      return null;
    }
    const input = filmedInput(recording, plane, start, this.#heldAt_deg);
    this.says = words.gradedText(rough_m, this.session.units);
    return { input, run: recordScenario({ ...setup, move: input, hold_s }) };
  }
}
