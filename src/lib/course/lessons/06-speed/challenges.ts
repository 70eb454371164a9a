import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'a-steady-pace',
    title: 'A steady pace',
    ask: 'Drag the jig {3 ft|90 cm} in about 7 seconds, evenly, all on bottom.',
    setup: deeperWith({ start: { bait_x_m: ft(50), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.9144, band_m: 0.15, weight: 34 },
      { kind: 'pace', m_s: [0.06, 0.3], weight: 33 },
      { kind: 'contact', least: 0.9, weight: 33 }
    ],
    visibility: 'seen',
    reference: sweep(60, 87.5, 7),
    // Haste: it leaves the bottom.
    beginner: sweep(60, 87.5, 1.2)
  },
  {
    id: 'near-the-boat',
    title: 'Close to the boat',
    ask: 'The jig is close. Drag it {1 ft 3 in|38 cm} without lifting it.',
    setup: deeperWith({ start: { bait_x_m: ft(25), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.381, band_m: 0.08, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.25, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 73, 6),
    // The pace that was right further out.
    beginner: sweep(60, 76, 0.9)
  }
] satisfies Challenge[];
