import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'through-the-slack',
  title: 'Through the slack',
  ask: 'There’s slack in the line. Move the jig {1 ft|30 cm} anyway.',
  setup: waterWith({ start: { bait_x_m: 14, slack_m: 0.4 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.3048, weight: 33 }
  ],
  visibility: 'seen',
  reference: sweep(60, 77.5, 4),
  // The move that is right on a tight line.
  beginner: sweep(60, 70, 3)
} satisfies Challenge;
