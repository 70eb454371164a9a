/** Speeds of a replay: as it was, and slowed down. */
export const RATES = [1, 0.25] as const;
/** One step of the replay's step buttons, s. */
const STEP_S = 0.05;

/** Where a replay stands. */
export class Player {
  time_s = $state(0);
  isPlaying = $state(false);
  rate = $state<(typeof RATES)[number]>(1);
  /** Whether it begins anew when it has come to the end. */
  isLooped = $state(false);

  /** `ends_s`: how long the film is that is played, s. */
  constructor(readonly ends_s: number) {}

  /** Plays on, or from the beginning when it has come to the end. */
  play(): void {
    if (this.time_s >= this.ends_s) this.time_s = 0;
    this.isPlaying = true;
  }

  /** Plays from the beginning, wherever it stands. */
  again(): void {
    this.time_s = 0;
    this.isPlaying = true;
  }

  pause(): void {
    this.isPlaying = false;
  }

  /** Plays over and over from now on, or only to the end. */
  loop(isLooped: boolean): void {
    this.isLooped = isLooped;
    if (isLooped) this.play();
  }

  seek(t_s: number): void {
    this.isPlaying = false;
    this.time_s = Math.min(Math.max(t_s, 0), this.ends_s);
  }

  step(direction: 1 | -1): void {
    this.seek(Math.round(this.time_s / STEP_S + direction) * STEP_S);
  }

  /** Moves on by `elapsed_s` of the clock on the wall. */
  advance(elapsed_s: number): void {
    if (!this.isPlaying) return;
    this.time_s = Math.min(this.time_s + elapsed_s * this.rate, this.ends_s);
    if (this.time_s < this.ends_s) return;
    if (this.isLooped) this.time_s = 0;
    else this.isPlaying = false;
  }
}
