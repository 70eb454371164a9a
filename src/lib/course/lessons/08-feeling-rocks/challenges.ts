import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'three-stones-unseen',
    title: 'Three rocks',
    ask: 'Drag the jig {3 ft 6 in|1.05 m} and touch every rock on the way.',
    setup: deeperWith({
      bottom: {
        friction: 0.4,
        stones: [
          { x_m: ft(40) - 0.3, width_m: 0.24, height_m: 0.05 },
          { x_m: ft(40) - 0.65, width_m: 0.3, height_m: 0.08 },
          { x_m: ft(40) - 0.9, width_m: 0.2, height_m: 0.04 }
        ]
      },
      start: { bait_x_m: ft(40), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'stones', touched: [0, 1, 2], weight: 33 },
      { kind: 'contact', least: 0.8, weight: 34 },
      { kind: 'travel', target_m: 1.0668, band_m: 0.2, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 90.5, 8),
    // A fast hand flies over what it came to feel.
    beginner: sweep(60, 90.5, 0.9)
  },
  {
    id: 'over-one-boulder',
    title: 'Over one boulder',
    ask: 'Pull the jig {3 ft 6 in|1.05 m}, slowly, up and over the boulder.',
    setup: deeperWith({
      bottom: { friction: 0.4, stones: [{ x_m: ft(40) - 0.5, width_m: 0.6, height_m: 0.22 }] },
      start: { bait_x_m: ft(40), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'stones', touched: [0], weight: 33 },
      { kind: 'contact', least: 0.75, weight: 34 },
      { kind: 'travel', target_m: 1.0668, band_m: 0.22, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 90, 9),
    // Over it in a leap.
    beginner: sweep(60, 90, 0.8)
  }
] satisfies Challenge[];
