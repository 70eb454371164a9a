import { recordScenario, ScenarioError } from '$lib/model';
import type { LiveRun, Move, RecordedRun } from '$lib/model';
import { canBeCalled, formatSpeed, type Guess, type GuessQuantity, type Units } from '$lib/scoring';
import { Announcer } from './announcer';
import { trySummaryOf } from './events';
import { FeltChannel } from './felt-channel.svelte';
import { filmOf } from './film';
import { FrameLoop } from './frame-loop';
import { Hand } from './hand';
import { Handling } from './handling.svelte';
import { LiveTry, type Try } from './live-try';
import { NextStep } from './next-step.svelte';
import { blendPoses, newPose, type Pose } from './pose';
import { LiveReading } from './live-reading.svelte';
import { movedAngle, ROD_LIMITS } from './rod-angles';
import type { Scene } from './scene';
import { Showing } from './showing.svelte';
import type { Backdrop } from './stage';
import { Stepper } from './stepper';
import { ButtonSpeed } from './button-speed.svelte';
import { laidInTurns } from './laid-in-turns';
import { RodFocus } from './rod-focus';
import { reelPace } from './task-steps';
import { isSameTask, type TryTask } from './try-task';

/**
 * The model runs this far behind the clock on the wall, ms: pointer events come in bundles once a
 * frame, and each tick must know the events on both sides of it.
 */
const BEHIND_MS = 25;
/** A hand at rest that has not been heard of for so long is left alone until it is, ms. */
const IDLE_MS = 600;
const TICK_MS = 10;

/** One learner at one rod: ready, then moving, then shown what came of it. */
export class TrySession {
  phase = $state<'ready' | 'moving' | 'guessing' | 'showing'>('ready');
  showing = $state.raw<Showing | null>(null);
  lastTry = $state.raw<Try | null>(null);
  /** What the setup or the line cannot do, in words; the water before stays. */
  fault = $state<ScenarioError | null>(null);
  spoken = $state('');
  readonly tipSpeed = new ButtonSpeed();
  readonly handling = new Handling();
  readonly felt = new FeltChannel();
  readonly reading = new LiveReading();
  readonly nextStep = new NextStep();
  isHidden = false;
  /** What is to be called of a try out of sight; null for nothing. */
  asks: GuessQuantity | null = null;
  /** Whether the page says what came of a try: it is not read out a second time. */
  isTold = false;
  onguess: (guess: Guess) => void = () => {};
  /** Whether a rod before a camera moves it: its picture is over the water then. */
  isFilmed = $state(false);
  /** Gives the try that counts where the live one is for the eye only; null where there is none. */
  retake: ((live: Try) => Try | null) | null = null;
  readonly focus = new RodFocus();
  units: Units = 'imperial';
  ontry: (made: Try) => unknown = () => {};
  private stage: Backdrop | null = null;
  private task: TryTask | null = null;
  private live: LiveTry | null = null;
  private blended: Pose = newPose(0);
  /** Whether the line of this task has not been laid yet. */
  private isBare = false;
  private input_ms = -Infinity;
  private readonly stepper = new Stepper(TICK_MS);
  private readonly announcer = new Announcer((text) => (this.spoken = text));
  private readonly loop = new FrameLoop((now, elapsed) => this.frame(now, elapsed));

  constructor(readonly scene: Scene) {}

  /**
   * Puts out gear and water for a new try; the same again leaves the try in progress alone. The first
   * line is laid once the water is on the screen, piece by piece, or at once when the rod is taken: on a
   * slow phone all of it together would hold up what is pressed.
   */
  prepare(task: TryTask): void {
    if (this.task && isSameTask(this.task, task)) return;
    const isFirst = this.task === null || this.isBare;
    this.task = task;
    this.tipSpeed.begin(task.steps, task.setup.rod.length_m);
    if (!isFirst) return this.again();
    this.isBare = true;
    this.nextStep.begin(task, task.start[movedAngle(task.plane)]);
    this.reading.begin(task.start[movedAngle(task.plane)]);
    const isWanted = () => this.isBare && this.task === task;
    void laidInTurns(task, isWanted, (laid) => this.again(laid));
  }

  /** Lays the first line, unless that is done. */
  private lay(): void {
    if (this.isBare) this.again();
  }

  /** The same water seen with other ghosts, target or units. */
  setStage(stage: Backdrop): void {
    this.stage = stage;
    this.scene.setStage(stage);
    this.loop.wake();
  }

  /** The rod goes back to its start and the line is laid anew, unless it is laid already. */
  again(laid?: LiveRun): void {
    const { task } = this;
    if (!task) return;
    this.isBare = false;
    const hand = new Hand(task.start[movedAngle(task.plane)], ROD_LIMITS[task.plane]);
    try {
      this.live = new LiveTry(task.setup, task.plane, task.start, hand, task.longest_pause_s, laid);
      this.fault = null;
    } catch (error) {
      if (!(error instanceof ScenarioError)) throw error;
      this.fault = error;
      return;
    }
    this.live.reel.pace_m_s = reelPace(task.steps);
    this.felt.begin(task.setup);
    this.blended = newPose(this.live.now.x.length);
    this.reading.begin(hand.angle_deg);
    this.nextStep.begin(task, hand.angle_deg);
    this.phase = 'ready';
    this.handling.begin();
    this.showing = null;
    hand.keySpeed_deg_s = this.tipSpeed.turn_deg_s;
    this.stepper.pause();
    this.loop.wake();
  }

  /** The pointer wants the rod at this angle. */
  pointAt(t_ms: number, angle_deg: number): void {
    this.lay();
    if (this.nextStep.isDropAwaited) return this.handling.tellEarly();
    this.live?.hand.pointAt(t_ms, angle_deg);
    this.handling.pull();
    this.feel(t_ms);
  }

  /**
   * Held keys or buttons turn the rod up (1), down (−1) or not (0).
   * @param isFast whether as a hook is set, whatever the speed of the keys
   */
  turn(t_ms: number, direction: -1 | 0 | 1, isFast = false): void {
    this.hold('hand', t_ms, direction * (isFast ? this.tipSpeed.timesOfSet : 1));
  }

  /** Held keys or buttons take line in (1), give it (−1) or let the reel stand (0). */
  reel(t_ms: number, direction: -1 | 0 | 1): void {
    this.hold('reel', t_ms, direction);
  }

  private hold(what: 'hand' | 'reel', t_ms: number, direction: number): void {
    if (this.phase === 'showing') {
      if (direction === 0) return;
      this.again();
    }
    this.lay();
    if (this.nextStep.isDropAwaited) return this.handling.tellEarly();
    if (what === 'reel') this.live?.reel.turn(t_ms, direction);
    else if (this.live) this.turnHand(this.live.hand, t_ms, direction);
    const isBegun = this.phase !== 'ready';
    if (this.task) this.handling.press(what, this.task.plane, t_ms, direction, isBegun);
    this.feel(t_ms);
  }

  /** As far, and as gently, as the step that comes now has a button turn the rod. */
  private turnHand(hand: Hand, t_ms: number, direction: number): void {
    const { stop_deg, times } = this.nextStep.pressOf(Math.sign(direction), hand.wanted_deg);
    hand.turn(t_ms, direction * (this.tipSpeed.isOwn ? times : 1), stop_deg);
  }

  /** A phone in the hand has turned the rod this far from its start, degrees. */
  tilt(t_ms: number, turned_deg: number): void {
    const { task } = this;
    if (!task || this.phase === 'showing' || this.phase === 'guessing') return;
    this.pointAt(t_ms, task.start[movedAngle(task.plane)] + turned_deg);
  }

  /** Takes hold of the rod where it is; after a try this begins the next. */
  takeHold(): number {
    if (this.phase === 'showing') this.again();
    this.lay();
    return this.live?.hand.wanted_deg ?? 0;
  }

  /** @param isShown whether its buttons show it, and say it; where they are put away it is told */
  changeKeySpeed(by: -1 | 1, isShown: boolean): void {
    this.tipSpeed.change(by);
    if (this.live) this.live.hand.keySpeed_deg_s = this.tipSpeed.turn_deg_s;
    if (isShown) return;
    this.announcer.tell(formatSpeed(this.tipSpeed.m_s, this.units));
    this.loop.wake();
  }

  /** Starts the try, ends it, or makes ready for the next: the one thing to do now. */
  next(): void {
    if (this.phase === 'showing') this.again();
    else if (this.phase === 'moving') this.finish();
    else if (this.phase === 'ready') {
      this.lay();
      this.live?.begin();
      this.feel(performance.now());
    }
  }

  /** Shows a move that nobody's hand made. */
  demonstrate(move: Move): void {
    if (!this.task || !this.stage) return;
    this.again();
    const { setup, hold_s } = this.task;
    this.show(recordScenario({ ...setup, move, hold_s }), true);
  }

  /** Draws again soon: the scrubber has moved. */
  readonly wake = (): void => this.loop.wake();

  readonly stop = (): void => {
    this.isBare = false;
    this.loop.stop();
  };

  /** Keys that are released while the page is not looking are never heard of. */
  letGo(): void {
    this.live?.hand.turn(performance.now(), 0);
    this.live?.reel.turn(performance.now(), 0);
  }

  private feel(t_ms: number): void {
    this.input_ms = t_ms;
    this.loop.wake();
  }

  private finish(): void {
    if (!this.live || !this.task) return;
    const live = this.live.finish(this.task.hold_s);
    const made = this.retake ? this.retake(live) : live;
    if (!made) return this.again();
    this.lastTry = made;
    if (this.isHidden && this.asks && canBeCalled(this.asks, made.run.result))
      this.phase = 'guessing';
    else this.reveal(made);
  }

  /** What the learner says the bait did: now it is shown. */
  guess(guess: Guess): void {
    if (this.phase !== 'guessing' || !this.lastTry) return;
    this.onguess(guess);
    this.reveal(this.lastTry);
    // The form that had the keys is gone.
    this.focus.take();
  }

  private reveal(made: Try): void {
    const isReveal = this.isHidden && !matchMedia('(prefers-reduced-motion: reduce)').matches;
    this.show(made.run, isReveal);
    if (!this.isTold) this.announcer.tell(trySummaryOf(made.run, this.units));
    const isPassed = this.ontry(made) === true;
    if (!isPassed || !this.showing) return;
    this.showing.isPassed = true;
    this.felt.passed();
  }

  private show(run: RecordedRun, fromStart: boolean): void {
    if (!this.stage) return;
    const film = filmOf(run);
    this.showing = new Showing(film, this.stage);
    this.phase = 'showing';
    this.showing.player.seek(fromStart ? 0 : film.ends_s);
    if (fromStart) this.showing.player.play();
    this.loop.wake();
  }

  private frame(now_ms: number, elapsed_ms: number): boolean {
    this.announcer.flush(now_ms);
    if (this.showing) {
      this.showing.player.advance(elapsed_ms / 1000);
      this.showing.draw(this.scene);
      this.felt.followAgain(this.showing, now_ms);
      return this.showing.player.isPlaying || this.announcer.isWaiting;
    }
    if (this.phase === 'guessing') return false;
    const goesOn = this.live !== null && this.follow(this.live, now_ms);
    return goesOn || this.announcer.isWaiting;
  }

  private follow(live: LiveTry, now_ms: number): boolean {
    live.isPressed = this.handling.isPressed;
    live.isHeld = this.handling.isDragged;
    const share = this.stepper.advance(now_ms - BEHIND_MS, (t_ms) => live.tick(t_ms));
    if (live.stage !== 'waiting') this.phase = 'moving';
    blendPoses(live.before, live.now, share, this.blended);
    const { trace } = live;
    this.scene.draw({
      pose: this.blended,
      trace,
      ticks: trace.t_s.length,
      events: live.events,
      isRevealed: false,
      isPassed: false,
      isHidden: this.isHidden
    });
    this.felt.follow(live.setup, trace, trace.t_s.length - 1, now_ms, live.now.given_m);
    this.read(live, now_ms);
    if (this.phase === 'moving') this.lookAhead(live, now_ms);
    if (live.stage === 'still') {
      if (!live.isTouch) this.finish();
      else {
        this.again();
        this.handling.tellTouch();
        return true;
      }
    }
    // What a late frame has not followed yet is followed by the next, however long ago it was heard.
    const goesOn = live.stage !== 'waiting' || !this.isLeftAlone(live, now_ms);
    if (!goesOn) this.stepper.pause();
    return goesOn;
  }

  private lookAhead(live: LiveTry, now_ms: number): void {
    this.nextStep.look(live, now_ms, this.isHidden);
    this.handling.look(live.isTouch, this.isLeftAlone(live, now_ms));
  }

  private isLeftAlone(live: LiveTry, now_ms: number): boolean {
    return now_ms - this.input_ms >= IDLE_MS && live.isAtRest;
  }

  private read(live: LiveTry, now_ms: number): void {
    if (!this.stage) return;
    const news = this.reading.read(live, this.stage, this.units, now_ms);
    if (news && !this.isHidden) this.announcer.tell(news);
  }
}
