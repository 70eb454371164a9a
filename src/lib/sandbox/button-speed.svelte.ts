import { FIRST_KEY_SPEED, KEY_SPEEDS_M_S, SET_HOOK_M_S } from '$lib/scoring';
import { buttonPaces } from './button-pace';
import type { TaskStep } from './task-steps';

/** How fast buttons and keys move the tip, of a few speeds that a task has. */
export class ButtonSpeed {
  private choices_m_s = $state.raw<readonly number[]>(KEY_SPEEDS_M_S);
  private chosen = $state(FIRST_KEY_SPEED);
  /** The speed that is the task’s own. */
  private own = FIRST_KEY_SPEED;
  private rod_m = 1;

  /** The speeds of a new task, with its own chosen. */
  begin(steps: readonly TaskStep[], rodLength_m: number): void {
    const { m_s, first } = buttonPaces(steps, rodLength_m);
    this.choices_m_s = m_s;
    this.own = this.chosen = first;
    this.rod_m = rodLength_m;
  }

  get m_s(): number {
    return this.choices_m_s[this.chosen];
  }

  /** The rod turns as fast as that, degrees a second. */
  get turn_deg_s(): number {
    return ((this.m_s / this.rod_m) * 180) / Math.PI;
  }

  get isOwn(): boolean {
    return this.chosen === this.own;
  }

  /** How many times as fast a hook is set. */
  get timesOfSet(): number {
    return SET_HOOK_M_S / this.m_s;
  }

  change(by: -1 | 1): void {
    this.chosen = Math.min(Math.max(this.chosen + by, 0), this.choices_m_s.length - 1);
  }
}
