/** What counts as held still, in the unit of the readings. */
export interface Stillness {
  /** For so long, s. */
  readonly hold_s: number;
  /** Readings stray less than this. */
  readonly within: number;
  /** And lie this far from what was taken last: another pose. */
  readonly apart: number;
}

/** Takes a pose by itself once it is held still: both hands are on the rod. */
export class StillTaker {
  private readings: { readonly t_s: number; readonly value: number }[] = [];
  private taken: number | null = null;

  constructor(private readonly stillness: Stillness) {}

  /** The mean of what was held, once; null until then. */
  next(t_s: number, value: number): number | null {
    const { hold_s, within, apart } = this.stillness;
    this.readings.push({ t_s, value });
    while (this.readings.length > 1 && t_s - this.readings[1].t_s >= hold_s) this.readings.shift();
    if (t_s - this.readings[0].t_s < hold_s) return null;
    const values = this.readings.map((reading) => reading.value);
    if (Math.max(...values) - Math.min(...values) > within) return null;
    const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
    if (this.taken !== null && Math.abs(mean - this.taken) < apart) return null;
    this.taken = mean;
    return mean;
  }

  /** The tape was not seen: what was held before does not count. */
  interrupt(): void {
    this.readings = [];
  }
}
