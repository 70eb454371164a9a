import { addBite } from './bite';
import { stemsOf } from './ground';
import type { RunRecord } from './record';
import type { Setup } from './scenario';
import { Snag } from './snag';
import type { Start } from './start';
import { Stems } from './stems';

/** What befalls a bait besides line, water and bottom: stems, snags, fish, and a line that parts. */
export class Fate {
  /** Whether the bait has been on the bottom. */
  hasTouched: boolean;
  private readonly side: number;
  private readonly stems: Stems | null;
  private readonly snag: Snag | null;
  private readonly stemLoad = { force_N: 0, stiffness_N_m: 0 };
  private isBroken = false;
  private bitesSeen = 0;

  constructor(
    private readonly setup: Setup,
    private readonly parts: Start,
    private readonly record: RunRecord
  ) {
    this.side = Math.sign(setup.start.bait_x_m);
    const stems = stemsOf(setup);
    const { state } = parts.solver;
    this.stems = stems.length > 0 ? new Stems(stems, state.x[state.nodes - 1]) : null;
    this.snag = setup.bottom.snags ? new Snag(this.side) : null;
    this.hasTouched = parts.solver.state.isTouching;
  }

  /** Sets what draws on the bait during the step that ends at `end_s`. */
  before(end_s: number): void {
    const { solver, bait } = this.parts;
    const { load, state } = solver;
    load.x = load.z = load.stiffness_N_m = 0;
    for (const bite of this.setup.bites) {
      addBite(bite, end_s, this.side, bait.weightInWater_N, load);
    }
    if (!this.stems) return;
    this.stems.forceAt(state.x[state.nodes - 1], this.stemLoad);
    load.x += this.stemLoad.force_N;
    load.stiffness_N_m = this.stemLoad.stiffness_N_m;
  }

  /** Notes what a step that was kept has brought about. */
  after(end_s: number, step_s: number): void {
    const { solver, bottom } = this.parts;
    const { state } = solver;
    if (state.isTouching && !this.hasTouched) {
      this.hasTouched = true;
      this.record.events.push({ t_s: end_s, kind: 'bottom' });
    }
    const n = state.nodes - 1;
    if (this.stems) {
      const height = state.z[n] - bottom.heightAt(state.x[n]);
      const slips = this.stems.follow(state.x[n], height);
      for (let i = 0; i < slips; i++) this.record.events.push({ t_s: end_s, kind: 'stem slips' });
    }
    this.noteBites(end_s);
    this.followSnag(end_s, step_s);
    this.mayBreak(end_s);
  }

  private noteBites(end_s: number): void {
    const { bites } = this.setup;
    while (this.bitesSeen < bites.length && bites[this.bitesSeen].t_s <= end_s) {
      const { t_s, kind } = bites[this.bitesSeen++];
      this.record.events.push({ t_s, kind: 'bite', bite: kind });
    }
  }

  private followSnag(end_s: number, step_s: number): void {
    if (!this.snag || this.isBroken) return;
    const { solver } = this.parts;
    const { x, z, nodes } = solver.state;
    const dx = this.side * (x[nodes - 1] - x[nodes - 2]);
    const dz = z[nodes - 2] - z[nodes - 1];
    const came = this.snag.follow(step_s, solver.touch.contact, {
      tension_N: solver.tensionNow(nodes - 2),
      angle_deg: (Math.atan2(dz, dx) * 180) / Math.PI
    });
    solver.isPinned = this.snag.isHeld;
    if (came) this.record.events.push({ t_s: end_s, ...came });
  }

  private mayBreak(end_s: number): void {
    const load_N = this.setup.line.breaking_load_N;
    if (load_N === undefined || this.isBroken) return;
    const { solver } = this.parts;
    const last = solver.state.nodes - 2;
    if (Math.max(solver.tensionNow(0), solver.tensionNow(last)) <= load_N) return;
    this.isBroken = true;
    solver.breakOff();
    this.record.events.push({ t_s: end_s, kind: 'break' });
  }
}
