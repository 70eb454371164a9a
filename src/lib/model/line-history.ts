import type { LineState } from './line-state';

/** Where the line lay at every tick of a run. Plain data, so that it goes from one thread to another. */
export interface LineHistory {
  readonly nodes: number;
  /** Nodes from tip to bait, tick by tick, m; 32 bits, which are seven digits: for pictures. */
  readonly x: Float32Array;
  readonly z: Float32Array;
}

/** A try of ten seconds fits; a longer one doubles its room as it goes. */
const FIRST_TICKS = 1024;

/** Keeps a line's nodes tick by tick while it is being run. */
export class LineRecorder {
  private ticks = 0;
  private x: Float32Array;
  private z: Float32Array;

  constructor(private readonly nodes: number) {
    this.x = new Float32Array(FIRST_TICKS * nodes);
    this.z = new Float32Array(FIRST_TICKS * nodes);
  }

  /** Keeps the line as it lies now, as the next tick. */
  add({ x, z }: Pick<LineState, 'x' | 'z'>): void {
    const at = this.ticks * this.nodes;
    if (at === this.x.length) {
      this.x = doubled(this.x);
      this.z = doubled(this.z);
    }
    this.x.set(x, at);
    this.z.set(z, at);
    this.ticks++;
  }

  history(): LineHistory {
    const end = this.ticks * this.nodes;
    return { nodes: this.nodes, x: this.x.slice(0, end), z: this.z.slice(0, end) };
  }
}

function doubled(old: Float32Array): Float32Array {
  const grown = new Float32Array(2 * old.length);
  grown.set(old);
  return grown;
}
