/** Cut-off at rest, Hz, and how fast it rises with speed: tried against a hand's own trembling. */
const LEAST_HZ = 1;
const RISE = 0.05;
/** Of the speed itself, Hz. */
const SPEED_HZ = 1;

/** The one-euro filter (Casiez, Roussel & Vogel 2012): calm at rest, quick in motion. For the eye, not for marks. */
export class OneEuro {
  private value: number | null = null;
  private speed = 0;
  private last_s = 0;

  /** The next reading, at its own time. */
  next(t_s: number, reading: number): number {
    const step_s = t_s - this.last_s;
    this.last_s = t_s;
    if (this.value === null || step_s <= 0) return (this.value ??= reading);
    this.speed += share(SPEED_HZ, step_s) * ((reading - this.value) / step_s - this.speed);
    const cutoff_Hz = LEAST_HZ + RISE * Math.abs(this.speed);
    this.value += share(cutoff_Hz, step_s) * (reading - this.value);
    return this.value;
  }
}

/** Share of a new reading in a low-pass of first order. */
function share(cutoff_Hz: number, step_s: number): number {
  const r = 2 * Math.PI * cutoff_Hz * step_s;
  return r / (r + 1);
}
