import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'out-of-the-mud',
  title: 'Out of the mud',
  ask: 'Mud holds the jig. Bring it {1 ft|30 cm} without making it jump.',
  setup: deeperWith({
    bottom: { ground: { kind: 'mud', seed: 3 } },
    start: { bait_x_m: 20, slack_m: 0.03 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.07, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.45, weight: 33 }
  ],
  visibility: 'seen',
  reference: sweep(60, 71, 4),
  // Torn out: it goes twice as far.
  beginner: sweep(60, 82, 0.6)
} satisfies Challenge;
