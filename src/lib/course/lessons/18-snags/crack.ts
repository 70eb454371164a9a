import { ft } from '../../items/draw';
import { deeperWith } from '../fathomley';

/** A slab too steep to slide over: a jig that is dragged against it at any pace hangs, on line that would hold a hard pull. */
export const hangs = deeperWith({
  bottom: {
    friction: 0.4,
    snags: true,
    stones: [{ x_m: ft(60) - 0.3, width_m: 0.16, height_m: 0.4 }]
  },
  start: { bait_x_m: ft(60), slack_m: 0.03 },
  line: { material: 'fluorocarbon', diameter_m: 0.0003, breaking_load_N: 60 }
});
