import type { Stem } from './ground';

type Grip = 'ahead' | 'loaded' | 'slipped';

/** A stem takes hold of a bait again once the bait has been this far back beyond it, m. */
const BACK_BEYOND_M = 0.03;

/** The stalks a bait is drawn through: which of them bend on it, and which have let it go. */
export class Stems {
  private readonly grip: Grip[];
  /** Stems that hold now. */
  loaded = 0;

  private readonly side: number;

  /** `bait_x_m`: where the bait begins; stems further from the angler lie behind it and hold nothing. */
  constructor(
    private readonly stems: readonly Stem[],
    bait_x_m: number
  ) {
    this.side = Math.sign(bait_x_m);
    this.grip = stems.map(({ x_m }) => (this.side * (x_m - bait_x_m) > 0 ? 'slipped' : 'ahead'));
  }

  /** Force on a bait at `x_m`, N along x, and its stiffness, N/m. */
  forceAt(x_m: number, out: { force_N: number; stiffness_N_m: number }): void {
    out.force_N = out.stiffness_N_m = 0;
    if (this.loaded === 0) return;
    this.stems.forEach((stem, i) => {
      if (this.grip[i] !== 'loaded') return;
      out.force_N += stem.stiffness_N_per_m * (stem.x_m - x_m);
      out.stiffness_N_m += stem.stiffness_N_per_m;
    });
  }

  /** Notes where a step has brought the bait. Returns how many stems slipped off it. */
  follow(x_m: number, height_m: number): number {
    let slips = 0;
    this.stems.forEach((stem, i) => {
      const past = this.side * (stem.x_m - x_m);
      if (past < -BACK_BEYOND_M) this.grip[i] = 'ahead';
      else if (past > 0 && this.grip[i] === 'ahead') {
        this.grip[i] = height_m < stem.height_m ? 'loaded' : 'slipped';
      } else if (this.grip[i] === 'loaded' && this.letsGo(stem, past, height_m)) {
        this.grip[i] = 'slipped';
        slips++;
      }
    });
    this.loaded = this.grip.filter((grip) => grip === 'loaded').length;
    return slips;
  }

  /** How far a bait at `x_m` draws each stem over, m towards the angler: 0 for those it does not load. */
  leansAt(x_m: number): Float32Array {
    return Float32Array.from(this.stems, (stem, i) =>
      this.grip[i] === 'loaded' ? this.side * (stem.x_m - x_m) : 0
    );
  }

  /** A bent stem is lower by what it leans; it lets go at its slip load or when cleared. */
  private letsGo(stem: Stem, past_m: number, height_m: number): boolean {
    const stands = Math.sqrt(Math.max(0, stem.height_m ** 2 - past_m ** 2));
    return stem.stiffness_N_per_m * past_m >= stem.slip_N || height_m > stands;
  }
}
