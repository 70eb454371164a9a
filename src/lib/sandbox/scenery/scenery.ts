import { TICK_S, waterAt, type Trace } from '$lib/model';
import { baitOf } from '$lib/model/bait';
import { Stems } from '$lib/model/stems';
import type { Backdrop } from '../stage';
import { Pebbles } from './pebbles';
import { Silt, type Puff } from './silt';
import { Strands, type BaitPlace } from './strands';

/**
 * What moves with a run and is only to be looked at. All of it follows from the trace, tick by tick,
 * and every tick is kept, so that a replay looks the same at a moment however it was come by. The
 * model and the marks never see it.
 */

/** Strands that move less than this in a tick have come to rest, m. */
const STILL_M = 1e-6;

/** Two ticks of something, and how far the moment is from the first to the second (0–1). */
export interface Between {
  readonly a: Float32Array;
  readonly b: Float32Array;
  readonly share: number;
}

/** The scenery at one moment. */
export interface SceneryNow {
  readonly t_s: number;
  /** As Strands has them. */
  readonly strands: Between;
  /** How far each stem's top is drawn over towards the angler, m. */
  readonly leans: Between;
  /** As Pebbles has them. */
  readonly pebbles: Between;
  readonly radii_m: readonly number[];
  /** Clouds, in the order of time, also those yet to come. */
  readonly puffs: readonly Puff[];
}

interface Frame {
  readonly strands: Float32Array;
  readonly leans: Float32Array;
  readonly pebbles: Float32Array;
}

const NONE = new Float32Array(0);

export class Scenery {
  private readonly frames: Frame[] = [];
  private readonly strands: Strands;
  private readonly silt: Silt;
  private readonly stems: Stems;
  private readonly pebbles: Pebbles | null;

  /** `isCalm`: no clouds, and strands as they rest. */
  constructor(
    private readonly stage: Backdrop,
    readonly trace: Trace,
    private readonly isCalm: boolean
  ) {
    const { setup, baitRadius_m, heightAt, stems } = stage;
    const away = Math.sign(stage.bait.x_m);
    this.strands = new Strands(baitRadius_m, away, heightAt);
    this.silt = new Silt(setup, baitOf(setup, waterAt(setup.water.temperature_C)).weightInWater_N);
    this.stems = new Stems(stems, trace.bait_x_m[0]);
    this.pebbles = setup.bottom.ground?.kind === 'gravel' ? new Pebbles(stage) : null;
    this.strands.settle(placeAt(trace, 0));
    this.frames.push(this.look(null, true, 0));
  }

  /** The scenery at `t_s`, as far as the trace goes. */
  at(t_s: number): SceneryNow {
    const last = this.trace.t_s.length - 1;
    const place = Math.min(Math.max(t_s / TICK_S, 0), last);
    // Times are multiples of a tick only to rounding.
    const tick = Math.floor(place + 1e-6);
    const next = Math.min(tick + 1, last);
    while (this.frames.length <= next) this.tick(this.frames.length);
    const a = this.frames[tick];
    const b = this.frames[next];
    const share = Math.max(0, place - tick);
    return {
      t_s,
      strands: { a: a.strands, b: b.strands, share },
      leans: { a: a.leans, b: b.leans, share },
      pebbles: { a: a.pebbles, b: b.pebbles, share },
      radii_m: this.pebbles?.radii_m ?? [],
      puffs: this.isCalm ? [] : this.silt.puffs
    };
  }

  private tick(i: number): void {
    const { trace, stage } = this;
    const from = placeAt(trace, i - 1);
    const to = placeAt(trace, i);
    let moved_m = Math.hypot(to.x_m - from.x_m, to.z_m - from.z_m);
    if (this.isCalm) this.strands.settle(to);
    else moved_m = Math.max(moved_m, this.strands.step(from, to, TICK_S));
    this.silt.tick(trace, i);
    this.stems.follow(to.x_m, to.z_m - stage.heightAt(to.x_m));
    this.pebbles?.tick(from, to, stage.baitRadius_m);
    this.frames.push(this.look(this.frames[i - 1], moved_m > STILL_M, i));
  }

  /** What has not moved is not kept twice. */
  private look(before: Frame | null, hasMoved: boolean, i: number): Frame {
    const pebbles = this.pebbles?.places ?? NONE;
    if (before && !hasMoved) return pebbles === before.pebbles ? before : { ...before, pebbles };
    const x_m = this.trace.bait_x_m[i];
    return {
      strands: Float32Array.from(this.strands.offsets),
      leans: this.stage.stems.length > 0 ? this.stems.leansAt(x_m) : NONE,
      pebbles
    };
  }
}

function placeAt({ bait_x_m, bait_z_m }: Trace, i: number): BaitPlace {
  return { x_m: bait_x_m[i], z_m: bait_z_m[i] };
}

/** Value `i` at the moment. */
export function mixed({ a, b, share }: Between, i: number): number {
  return a[i] + share * (b[i] - a[i]);
}
