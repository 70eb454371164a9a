import { groundOf } from './ground';
import { seededRandom } from './random';
import type { Trace } from './record';
import { lineProperties, submergedFraction, type Setup } from './scenario';
import { GRAVITY_M_S2 } from './units';
import { waterDensity } from './water';

/**
 * The felt channel: what of the bait's way reaches the hand. It is the pull that the whole line
 * carries, as far as a hand can tell it, without its slow part; plus the grain of the bottom, which is
 * finer than the model's steps: friction that rises and falls with the place of the bait, so that its
 * pitch follows the speed. A bowed line passes on little: it gives by bowing more before it pulls.
 */
export const FELT_RATE_HZ = 2000;

/** Slower changes of pull than this are effort, not feeling, s. */
const EFFORT_S = 0.25;

/**
 * Least difference of a held load that is noticed, as a share of it (Pang, Tan & Durlach 1991,
 * *Perception & Psychophysics* 49, 531; from memory). A smaller share would let slack lines sound.
 */
const NOTICED_SHARE = 0.07;
/** What a hand holds anyway: 0.15 kg of rod whose middle is 0.55 m before the hand, N m; a choice. */
const ROD_MOMENT_NM = 0.15 * GRAVITY_M_S2 * 0.55;

/** A pull at the tip below this is not told from the rod's own weight, N. */
export function feltFrom(setup: Pick<Setup, 'rod'>): number {
  return (NOTICED_SHARE * ROD_MOMENT_NM) / setup.rod.length_m;
}

/**
 * Pull that the whole line carries at row `i`, N. What the tip has beyond it is the line's own weight
 * and the water on it, which tell nothing of the bait: on slack, all there is.
 */
export function carriedPull(trace: Trace, i: number): number {
  return Math.min(trace.tip_tension_N[i], trace.bait_tension_N[i]);
}

/**
 * Share of a small change of pull that a sagging line passes on: 1/(1 + (wL)²EA/(12 T³)), from the
 * equivalent modulus of a sagging cable (Ernst 1965). Slack is silence.
 */
export function passedOn(weight_N: number, axialStiffness_N: number, tension_N: number): number {
  const t3 = tension_N ** 3;
  return t3 / (t3 + (weight_N * weight_N * axialStiffness_N) / 12);
}

/** Turns the trace of a run, tick by tick, into the felt signal, N. */
export class FeltStream {
  readonly samplesATick: number;
  private readonly grain: Grain;
  private readonly from_N: number;
  private readonly lineWeight_N: number;
  private readonly axialStiffness_N: number;
  private effort_N = NaN;
  private lastX_m = NaN;
  private lastPull_N = 0;

  constructor(setup: Setup, tick_s: number) {
    const ground = groundOf(setup.bottom);
    const line = lineProperties(setup.line);
    const area = (Math.PI / 4) * line.diameter_m ** 2;
    const length_m = Math.hypot(setup.start.bait_x_m, setup.water.depth_m);
    this.samplesATick = Math.round(FELT_RATE_HZ * tick_s);
    this.from_N = feltFrom(setup);
    const load_N = setup.bait.mass_kg * submergedFraction(setup) * GRAVITY_M_S2;
    this.lineWeight_N =
      Math.abs(line.density_kg_m3 - waterDensity(setup.water.temperature_C)) *
      area *
      GRAVITY_M_S2 *
      length_m;
    this.axialStiffness_N = line.youngs_modulus_Pa * area;
    const amplitude_N = ground.grain.share * setup.bottom.friction * load_N;
    this.grain = new Grain(ground.grain.length_m, amplitude_N, setup.bottom.ground?.seed ?? 0);
  }

  /** Writes `samplesATick` values from `at` on: the tick that ended in row `i` of the trace. */
  tick(trace: Trace, i: number, out: Float32Array, at: number): void {
    const carried = carriedPull(trace, i);
    const pull = Math.max(0, carried - this.from_N);
    const x = trace.bait_x_m[i];
    if (Number.isNaN(this.effort_N)) {
      this.effort_N = this.lastPull_N = pull;
      this.lastX_m = x;
    }
    const n = this.samplesATick;
    const passed = pull > 0 ? passedOn(this.lineWeight_N, this.axialStiffness_N, carried) : 0;
    const fade = 1 / (EFFORT_S * FELT_RATE_HZ);
    for (let k = 1; k <= n; k++) {
      const now = this.lastPull_N + ((pull - this.lastPull_N) * k) / n;
      this.effort_N += fade * (now - this.effort_N);
      const place = this.lastX_m + ((x - this.lastX_m) * k) / n;
      const rub = trace.contact[i] === 1 && x !== this.lastX_m ? passed * this.grain.at(place) : 0;
      out[at + k - 1] = now - this.effort_N + rub;
    }
    this.lastX_m = x;
    this.lastPull_N = pull;
  }
}

/** The felt signal of a whole trace. */
export function feltSignal(setup: Setup, trace: Trace): Float32Array {
  const rows = trace.t_s.length;
  const stream = new FeltStream(setup, rows > 1 ? trace.t_s[1] - trace.t_s[0] : 1);
  const out = new Float32Array((rows - 1) * stream.samplesATick);
  for (let i = 1; i < rows; i++) stream.tick(trace, i, out, (i - 1) * stream.samplesATick);
  return out;
}

/** Cells of noise before it repeats. */
const GRAIN_CELLS = 4096;

/** Smooth noise over the bottom: random values at cells of the grain's length, eased between. */
class Grain {
  private readonly values = new Float64Array(GRAIN_CELLS);

  constructor(
    private readonly length_m: number,
    amplitude_N: number,
    seed: number
  ) {
    const random = seededRandom(seed + 17);
    // In a plain loop: from() took a slow phone longer than all the rest of a try's beginning.
    for (let i = 0; i < GRAIN_CELLS; i++) this.values[i] = amplitude_N * (2 * random() - 1);
  }

  at(x_m: number): number {
    const place = Math.abs(x_m) / this.length_m;
    const cell = Math.floor(place);
    const u = place - cell;
    const eased = u * u * (3 - 2 * u);
    const a = this.values[cell % GRAIN_CELLS];
    return a + eased * (this.values[(cell + 1) % GRAIN_CELLS] - a);
  }
}
