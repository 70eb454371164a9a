import { waterWith } from '../fathomley';

/** A stone that takes the hook of a jig dragged against it, and line that would hold a hard pull. */
export const hangs = waterWith({
  bottom: { friction: 0.4, snags: true, stones: [{ x_m: 9.7, width_m: 0.2, height_m: 0.25 }] },
  line: { material: 'fluorocarbon', diameter_m: 0.0003, breaking_load_N: 60 }
});
