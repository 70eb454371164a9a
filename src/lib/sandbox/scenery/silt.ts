import { groundOf, type GroundKind, type Setup, type Trace } from '$lib/model';

/** A cloud of fines that the bait has raised. */
export interface Puff {
  readonly t_s: number;
  readonly x_m: number;
  readonly z_m: number;
  /** Its radius when it is new, m. */
  readonly radius_m: number;
  /** How long it takes to thin to a third, s. */
  readonly settles_s: number;
}

/** Which bottoms make clouds: share of the work that raises them, and how slowly they settle. A choice. */
const FINES: Partial<Record<GroundKind, { share: number; settles_s: number }>> = {
  mud: { share: 1, settles_s: 3 },
  clay: { share: 0.4, settles_s: 1.6 },
  sand: { share: 0.5, settles_s: 0.6 }
};
/** A bait that is drawn along raises a cloud this often, m. */
const EVERY_M = 0.03;
/** Radius of the cloud that one joule raises, m; volume goes with work. A choice. */
const RADIUS_M = 0.22;

/** What the bait's weight in water, its line and the bottom leave of a run: its clouds, tick by tick. */
export class Silt {
  readonly puffs: Puff[] = [];
  private slid_m = 0;
  private work_J = 0;

  constructor(
    private readonly setup: Setup,
    private readonly weight_N: number
  ) {}

  /** The tick that ended in row `i` of the trace. */
  tick(trace: Trace, i: number): void {
    const fines = this.setup.bottom.ground && FINES[this.setup.bottom.ground.kind];
    if (!fines || trace.contact[i] === 0) return;
    const step_m = Math.hypot(between(trace.bait_x_m, i), between(trace.bait_z_m, i));
    if (trace.contact[i - 1] === 0) {
      const speed_m_s = step_m / between(trace.t_s, i);
      this.raise(trace, i, fines, 0.5 * this.setup.bait.mass_kg * speed_m_s ** 2);
      return;
    }
    const { plough_N } = groundOf(this.setup.bottom);
    this.slid_m += step_m;
    this.work_J +=
      (this.setup.bottom.friction * loadAt(trace, i, this.weight_N) + plough_N) * step_m;
    if (this.slid_m < EVERY_M) return;
    this.raise(trace, i, fines, this.work_J);
    this.slid_m = this.work_J = 0;
  }

  private raise(
    { t_s, bait_x_m, bait_z_m }: Trace,
    i: number,
    { share, settles_s }: { share: number; settles_s: number },
    work_J: number
  ): void {
    const radius_m = RADIUS_M * Math.cbrt(share * work_J);
    this.puffs.push({ t_s: t_s[i], x_m: bait_x_m[i], z_m: bait_z_m[i], radius_m, settles_s });
  }
}

function between(values: readonly number[], i: number): number {
  return values[i] - values[i - 1];
}

/**
 * The bait's load on the bottom, N: its weight less the line's upward share, whose angle is taken as
 * that of the straight line to the tip. Good enough for a cloud.
 */
function loadAt(trace: Trace, i: number, weight_N: number): number {
  const along = trace.tip_x_m[i] - trace.bait_x_m[i];
  const up = trace.tip_z_m[i] - trace.bait_z_m[i];
  return Math.max(0, weight_N - (trace.bait_tension_N[i] * up) / Math.hypot(along, up));
}
