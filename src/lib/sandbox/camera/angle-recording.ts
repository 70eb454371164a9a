import type { RodRecording } from '$lib/film';

/** Angles as they come in from a camera. */
export class AngleRecording implements RodRecording {
  readonly t_s: number[] = [];
  readonly angle_deg: number[] = [];

  /** A frame that comes late is left out. */
  add(t_s: number, angle_deg: number): void {
    if (t_s <= (this.t_s.at(-1) ?? -Infinity)) return;
    this.t_s.push(t_s);
    this.angle_deg.push(angle_deg);
  }

  /** Forgets what lies longer back than this from `t_s`. */
  trim(t_s: number, keep_s: number): void {
    while (this.t_s.length > 2 && t_s - this.t_s[1] > keep_s) {
      this.t_s.shift();
      this.angle_deg.shift();
    }
  }

  get mean_deg(): number {
    return this.angle_deg.reduce((sum, one) => sum + one, 0) / this.angle_deg.length;
  }
}
