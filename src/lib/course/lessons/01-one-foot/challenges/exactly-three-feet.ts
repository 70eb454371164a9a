import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'exactly-three-feet',
  title: 'Exactly three feet',
  ask: 'Drag the jig {3 ft|90 cm}, within {5½ in|14 cm}. Keep it on bottom.',
  setup: waterWith({ start: { bait_x_m: 14, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.9144, band_m: 0.14, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.45, weight: 33 }
  ],
  visibility: 'seen',
  reference: sweep(60, 88, 5),
  // Half the way, and quick.
  beginner: sweep(60, 75, 0.5)
} satisfies Challenge;
