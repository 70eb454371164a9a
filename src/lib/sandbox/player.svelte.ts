import type { Film } from './film';

/** Speeds of a replay: as it was, and slowed down. */
export const RATES = [1, 0.25] as const;
/** One step of the replay's step buttons, s. */
const STEP_S = 0.05;

/** Where a replay stands. */
export class Player {
  time_s = $state(0);
  isPlaying = $state(false);
  rate = $state<(typeof RATES)[number]>(1);

  constructor(readonly film: Film) {}

  /** Plays on, or from the beginning when it has come to the end. */
  play(): void {
    if (this.time_s >= this.film.ends_s) this.time_s = 0;
    this.isPlaying = true;
  }

  pause(): void {
    this.isPlaying = false;
  }

  seek(t_s: number): void {
    this.isPlaying = false;
    this.time_s = Math.min(Math.max(t_s, 0), this.film.ends_s);
  }

  step(direction: 1 | -1): void {
    this.seek(Math.round(this.time_s / STEP_S + direction) * STEP_S);
  }

  /** Moves on by `elapsed_s` of the clock on the wall. */
  advance(elapsed_s: number): void {
    if (!this.isPlaying) return;
    this.time_s = Math.min(this.time_s + elapsed_s * this.rate, this.film.ends_s);
    if (this.time_s >= this.film.ends_s) this.isPlaying = false;
  }
}
