import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { DRAG_MOST_M_S, waterWith } from '../fathomley';

export default [
  {
    id: 'one-foot-half-seen',
    title: 'One foot',
    ask: 'Drag the jig {1 ft|30 cm}.',
    setup: waterWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 70, 2.5),
    // What most hands do that mean one foot: two.
    beginner: sweep(60, 79, 2)
  },
  {
    id: 'two-feet-unseen',
    title: 'Two feet, deeper',
    ask: '{15 ft|4.5 m} deep. Drag the jig {2 ft|60 cm}.',
    setup: waterWith({ depth_m: ft(15), start: { bait_x_m: ft(50), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6096, band_m: 0.0762, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 79, 4),
    // A foot and a half too far.
    beginner: sweep(60, 92, 3)
  },
  {
    id: 'one-foot-unseen',
    title: 'One foot, closer in',
    ask: '{10 ft|3 m} deep. Drag the jig {1 ft|30 cm}.',
    setup: waterWith({ start: { bait_x_m: ft(40), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 70, 2.5),
    // Too far, and too fast.
    beginner: sweep(60, 82, 1)
  }
] satisfies Challenge[];
