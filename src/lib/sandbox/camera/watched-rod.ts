import { OneEuro, StillTaker, type Pixel, type RodView } from '$lib/film';
import { recordScenario, type RodAngles, type Setup } from '$lib/model';
import type { Units } from '$lib/scoring';
import type { Try } from '../live-try';
import { movedAngle, type Plane } from '../rod-angles';
import { AngleRecording } from './angle-recording';
import * as words from './camera-words';
import {
  filmedInput,
  fromStart,
  MOST_ROUGH_M,
  roughness_m,
  STILL_BAIT_M,
  stillTravel_m
} from './filmed-rod';
import { RodPoses } from './rod-poses';

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
  readonly units: Units;
  tilt(t_ms: number, turned_deg: number): void;
  next(): void;
}

export type WatchPhase = 'pose' | 'bring' | 'still' | 'ready' | 'moving';

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
/** A frame without the tape for longer spoils a move, s; no frame for longer does where the rod turned. */
const LONGEST_GAP_S = 0.15;

/** A rod with tape on it, from frame to frame: posed, brought to its start, held still, moved, graded. */
export class WatchedRod {
  phase: WatchPhase = 'pose';
  says = '';
  #poses: RodPoses;
  #view: RodView | null = null;
  #ended = new StillTaker(ENDED);
  #eye = new OneEuro();
  #seen = new AngleRecording();
  #heldAt_deg = 0;
  #still = { travel_m: 0, seconds: STILL_S };
  #seen_s = 0;
  /** The last angle that was told. */
  #told = { t_s: 0, angle_deg: 0 };
  /** Why there was no grade: stays before what is to be done until the rod is taken up again. */
  #complaint = '';

  constructor(
    private readonly session: FilmedSession,
    /** What is to be done now: it changes from try to try. */
    private readonly task: () => FilmedTask
  ) {
    this.#poses = this.#posesAnew();
  }

  #posesAnew(): RodPoses {
    const { plane, setup } = this.task();
    this.#poses = new RodPoses({ plane, start_deg: this.#start_deg, reach_m: setup.rod.length_m });
    this.phase = 'pose';
    this.says = this.#poses.asks;
    return this.#poses;
  }

  get #start_deg(): number {
    const { plane, start } = this.task();
    return start[movedAngle(plane)];
  }

  /** The line is laid anew: the rod has to come to its start, and be still, again. */
  putDown(): void {
    if (this.phase !== 'pose') this.phase = 'bring';
  }

  /** The pieces of tape in a frame; null where they are not all seen. */
  look(t_ms: number, tapes: readonly Pixel[] | null): void {
    const t_s = t_ms / 1000;
    if (!tapes) return this.#miss(t_s);
    this.#seen_s = t_s;
    if (this.phase === 'pose') return this.#pose(t_s, tapes);
    const angle_deg = this.#view?.angleAt(this.#poses.readingOf(tapes)) ?? null;
    if (angle_deg === null) return this.#miss(t_s);
    const isHidden = this.#hides(t_s, angle_deg);
    this.#told = { t_s, angle_deg };
    if (this.phase === 'bring') this.#bring(angle_deg);
    else if (this.phase === 'still') this.#hold(t_s, angle_deg);
    else if (isHidden) this.#lose(words.SKIPPED);
    else this.#move(t_ms, angle_deg);
  }

  /** Whether a part of a move lies between the last angle and this one: how it was made nobody knows. */
  #hides(t_s: number, angle_deg: number): boolean {
    const turned_deg = Math.abs(angle_deg - this.#told.angle_deg);
    return t_s - this.#told.t_s > LONGEST_GAP_S && turned_deg >= BEGUN_DEG;
  }

  #lose(why: string): void {
    this.#seen = new AngleRecording();
    this.#complaint = why;
    if (this.phase === 'moving') this.session.next();
    this.phase = 'bring';
  }

  #miss(t_s: number): void {
    this.#poses.interrupt();
    if (t_s - this.#seen_s < LONGEST_GAP_S) return;
    if (this.phase === 'moving') this.#lose(words.LOST);
    else {
      this.putDown();
      this.says = words.OUT_OF_SIGHT;
    }
  }

  #pose(t_s: number, tapes: readonly Pixel[]): void {
    const view = this.#poses.next(t_s, tapes);
    if (view === null) this.says = this.#poses.asks;
    else if (typeof view === 'string') {
      this.#posesAnew();
      this.says = `${words.viewFaultText(view, this.task().plane)} ${this.says}`;
    } else {
      this.#view = view;
      this.phase = 'bring';
    }
  }

  #bring(angle_deg: number): void {
    if (this.session.phase !== 'ready') return;
    const away_deg = this.#start_deg - angle_deg;
    if (Math.abs(away_deg) > NEAR_DEG) {
      this.#say(words.bringRodText(away_deg, this.task().plane));
      return;
    }
    this.#seen = new AngleRecording();
    this.phase = 'still';
    this.#say(words.HOLD_STILL);
  }

  #say(text: string): void {
    this.says = this.#complaint ? `${this.#complaint} ${text}` : text;
  }

  #hold(t_s: number, angle_deg: number): void {
    if (Math.abs(angle_deg - this.#start_deg) > 2 * NEAR_DEG) return this.putDown();
    this.#seen.add(t_s, angle_deg);
    if (t_s - this.#seen.t_s[0] < SETTLE_S + STILL_S) return;
    this.#seen.trim(t_s, STILL_S);
    const { setup, plane, start } = this.task();
    const travel_m = stillTravel_m(setup, this.#seen, plane, start);
    this.#heldAt_deg = this.#seen.mean_deg;
    this.#still = { travel_m, seconds: STILL_S };
    this.#seen = new AngleRecording();
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

  #move(t_ms: number, angle_deg: number): void {
    const t_s = t_ms / 1000;
    this.#seen.add(t_s, angle_deg);
    const shown_deg = fromStart(this.#eye.next(t_s, angle_deg), this.#heldAt_deg, this.#start_deg);
    const turned_deg = shown_deg - this.#start_deg;
    // Waiting is no part of the move.
    if (this.phase === 'ready' && Math.abs(turned_deg) < BEGUN_DEG) {
      return this.#seen.trim(t_s, LEAD_S);
    }
    this.phase = 'moving';
    this.session.tilt(t_ms, turned_deg);
    const isOver = this.#ended.next(t_s, angle_deg) !== null;
    if (isOver && this.session.phase === 'moving') this.session.next();
  }

  /** The try that counts: the film's, without its jitter, in place of the live one; null for none. */
  retake(live: Try): Try | null {
    const view = this.#view;
    // Keys and buttons go on working: what the camera did not see is theirs.
    if (!view || this.phase !== 'moving') return live;
    this.phase = 'bring';
    // It was lost on the way.
    if (this.#seen.t_s.length < 3) return null;
    const { setup, plane, start, hold_s } = this.task();
    const rough_m = roughness_m(view, this.#seen, setup.rod.length_m, this.#still);
    if (rough_m > MOST_ROUGH_M) {
      this.#complaint = words.roughText(rough_m, this.session.units);
      return null;
    }
    const input = filmedInput(this.#seen, plane, start, this.#heldAt_deg);
    this.says = words.gradedText(rough_m, this.session.units);
    return { input, run: recordScenario({ ...setup, move: input, hold_s }) };
  }
}
