import { addBite } from './bite';
import type { Contact } from './bottom';
import { NO_LOAD, type ExternalLoad } from './external-load';
import { stemsOf } from './ground';
import type { RunEvent } from './record';
import type { Setup } from './scenario';
import { Snag } from './snag';
import { Stems } from './stems';

/** How a step has left bait and line. */
export interface StepEnd {
  readonly t_s: number;
  readonly step_s: number;
  readonly x_m: number;
  /** Above the bottom, m. */
  readonly height_m: number;
  readonly isTouching: boolean;
  readonly contact: Contact | null;
  readonly baitPull_N: number;
  /** Way from the bait to where the line comes from. */
  readonly towardsLine: { readonly x: number; readonly z: number };
}

/** Bites, stems and snags: forces for a step, and what the step changed. */
export class ExternalLoads {
  /** Whether the bait has been on the bottom. */
  hasTouched: boolean;
  /** Whether the line has parted: nothing takes or frees a hook any more. */
  isParted = false;
  private readonly side: number;
  private readonly stems: Stems | null;
  private readonly snag: Snag | null;
  private readonly stemLoad = { force_N: 0, stiffness_N_m: 0 };
  private readonly load = { ...NO_LOAD };
  private bitesSeen = 0;

  /** `bait_x_m` and `isTouching`: where the bait lies at the start, and whether on the bottom. */
  constructor(
    private readonly setup: Setup,
    private readonly weightInWater_N: number,
    bait_x_m: number,
    isTouching: boolean
  ) {
    this.side = Math.sign(setup.start.bait_x_m);
    const stems = stemsOf(setup);
    this.stems = stems.length > 0 ? new Stems(stems, bait_x_m) : null;
    this.snag = setup.bottom.snags ? new Snag(this.side) : null;
    this.hasTouched = isTouching;
  }

  /** The load on a bait at `x_m` in the step that ends at `end_s`. Valid until the next call. */
  at(end_s: number, x_m: number): ExternalLoad {
    const { load } = this;
    load.x = load.z = load.stiffness_N_m = 0;
    load.isPinned = this.snag !== null && this.snag.isHeld;
    for (const bite of this.setup.bites) {
      addBite(bite, end_s, this.side, this.weightInWater_N, load);
    }
    if (!this.stems) return load;
    this.stems.forceAt(x_m, this.stemLoad);
    load.x += this.stemLoad.force_N;
    load.stiffness_N_m = this.stemLoad.stiffness_N_m;
    return load;
  }

  /** Takes note of a step that was kept; returns what happened in it. */
  follow(end: StepEnd): RunEvent[] {
    const events: RunEvent[] = [];
    if (end.isTouching && !this.hasTouched) {
      this.hasTouched = true;
      events.push({ t_s: end.t_s, kind: 'bottom' });
    }
    const slips = this.stems?.follow(end.x_m, end.height_m) ?? 0;
    for (let i = 0; i < slips; i++) events.push({ t_s: end.t_s, kind: 'stem slips' });
    this.followBites(end.t_s, events);
    this.followSnag(end, events);
    return events;
  }

  private followBites(end_s: number, events: RunEvent[]): void {
    const { bites } = this.setup;
    while (this.bitesSeen < bites.length && bites[this.bitesSeen].t_s <= end_s) {
      const { t_s, kind } = bites[this.bitesSeen++];
      events.push({ t_s, kind: 'bite', bite: kind });
    }
  }

  private followSnag(end: StepEnd, events: RunEvent[]): void {
    if (!this.snag || this.isParted) return;
    const { x, z } = end.towardsLine;
    const came = this.snag.follow(end.step_s, end.contact, {
      tension_N: end.baitPull_N,
      angle_deg: (Math.atan2(z, -this.side * x) * 180) / Math.PI
    });
    if (came) events.push({ t_s: end.t_s, ...came });
  }
}
