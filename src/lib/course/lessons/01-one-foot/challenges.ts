import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { DRAG_MOST_M_S, fathomley, waterWith } from '../fathomley';

export default [
  {
    id: 'exactly-one-foot',
    title: 'Drag it one foot',
    ask: 'Drag the jig {1 ft|30 cm}, within {2 in|5 cm}. Keep it on bottom.',
    setup: fathomley,
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'seen',
    reference: { kind: 'sweep', from_deg: 60, to_deg: 70, duration_s: 2.5, elevation_deg: 0 },
    // A quick, wide pull: the hand that goes by the rod's handle and not by its tip.
    beginner: { kind: 'sweep', from_deg: 60, to_deg: 80, duration_s: 0.6, elevation_deg: 0 }
  },
  {
    id: 'exactly-two-feet',
    title: 'Drag it two feet',
    ask: 'Drag the jig {2 ft|60 cm}, within {4 in|10 cm}. Keep it on bottom.',
    setup: fathomley,
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'seen',
    reference: sweep(60, 79, 4),
    // The right way in no time: it flies.
    beginner: sweep(60, 90, 0.8)
  },
  {
    id: 'exactly-three-feet',
    title: 'Drag it three feet',
    ask: 'Drag the jig {3 ft, within 6 in|90 cm, between 76 cm and 1.07 m}. Keep it on bottom.',
    setup: waterWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.9144, band_m: 0.1524, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'seen',
    reference: sweep(60, 88, 5),
    // Half the way, and quick.
    beginner: sweep(60, 75, 0.5)
  },
  {
    id: 'contact-over-rocks',
    title: 'Keep contact over rocks',
    ask: 'Drag the jig {3 ft, within 6 in,|90 cm, between 76 cm and 1.07 m,} over three rocks. Touch each one. Take as long as you want.',
    setup: {
      ...fathomley,
      bottom: {
        friction: 0.4,
        stones: [
          { x_m: ft(30) - 0.25, width_m: 0.24, height_m: 0.04 },
          { x_m: ft(30) - 0.55, width_m: 0.3, height_m: 0.06 },
          { x_m: ft(30) - 0.78, width_m: 0.2, height_m: 0.03 }
        ]
      }
    },
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'stones', touched: [0, 1, 2], weight: 33 },
      { kind: 'contact', least: 0.8, weight: 34 },
      { kind: 'travel', target_m: 0.9144, band_m: 0.1524, weight: 33 }
    ],
    visibility: 'seen',
    reference: { kind: 'sweep', from_deg: 60, to_deg: 88, duration_s: 6, elevation_deg: 0 },
    // The same way in a fifth of the time: it clears what it should have felt.
    beginner: { kind: 'sweep', from_deg: 60, to_deg: 88, duration_s: 1.2, elevation_deg: 0 }
  }
] satisfies Challenge[];
