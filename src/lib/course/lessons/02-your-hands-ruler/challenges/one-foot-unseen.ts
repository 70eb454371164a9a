import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'one-foot-unseen',
  title: 'One foot, unseen',
  ask: 'Drag the jig {1 ft|30 cm}. You see only the boat and the rod.',
  setup: waterWith({ start: { bait_x_m: 12, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.3048, weight: 33 }
  ],
  visibility: 'unseen',
  reference: sweep(60, 70, 2.5),
  // Too far, and too fast.
  beginner: sweep(60, 82, 1)
} satisfies Challenge;
