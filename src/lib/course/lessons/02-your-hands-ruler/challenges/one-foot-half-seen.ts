import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'one-foot-half-seen',
  title: 'One foot, half seen',
  ask: 'Drag the jig {1 ft|30 cm}. Call it before you look.',
  setup: waterWith({ start: { bait_x_m: 14, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.3048, weight: 33 }
  ],
  visibility: 'half_seen',
  reference: sweep(60, 70, 2.5),
  // What most hands do that mean one foot: two.
  beginner: sweep(60, 79, 2)
} satisfies Challenge;
