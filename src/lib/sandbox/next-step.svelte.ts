import type { LiveTry } from './live-try';
import { StepsMade } from './steps-made';
import type { HandStep } from './task-steps';
import type { TryTask } from './try-task';

/** The one thing that a task wants done now. */
export class NextStep {
  /** Null where that is to wait, or for the learner to know. */
  now = $state<HandStep | 'done' | null>(null);
  /** How long the rest has gone that the task names, whole s; null where it names none. */
  rested_s = $state<number | null>(null);
  /** Whether a task’s jig still hangs over the water: Start drops it, and moved before, the rod would have moved too early. */
  isDropAwaited = false;
  private steps = new StepsMade([], 0);

  /** What comes now, lit or not. */
  get coming(): HandStep | null {
    const { upcoming } = this.steps;
    return upcoming ? this.steps.buttonOf(upcoming) : null;
  }

  /** How a button turns the rod that is pressed at this angle. */
  pressOf(direction: number, angle_deg: number) {
    return this.steps.pressOf(direction, angle_deg);
  }

  /** Before a try: a jig that falls from a free spool is begun without a step of its own. */
  begin({ setup, steps }: TryTask, angle_deg: number): void {
    this.steps = new StepsMade(steps, angle_deg);
    this.rested_s = null;
    const isHung = setup.start.spool === 'free';
    this.now = this.steps.upcoming?.does ?? (isHung ? 'start' : null);
    this.isDropAwaited = isHung && steps.length > 0 && this.now === 'start';
  }

  /** While the try moves, in sight or not. */
  look(live: LiveTry, now_ms: number, isHidden: boolean): void {
    const { hand, reel } = live;
    this.isDropAwaited = false;
    this.steps.look(now_ms, hand.angle_deg, reel.taken_m, hand.isTurned);
    live.isReelAwaited = this.steps.isReelToCome;
    const isDownInSight = !isHidden && live.events.some(({ kind }) => kind === 'bottom');
    this.now = this.steps.next(isDownInSight, isHidden);
    this.rested_s = this.steps.rested_s;
  }
}
