import type { Challenge } from '../../../../scoring';
import { lift, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'one-hour',
  title: 'One hour',
  ask: 'From nine o’clock, lift slowly until the jig has come {2 ft|60 cm}.',
  setup: deeperWith({ start: { bait_x_m: 28, slack_m: 0.05 } }),
  plane: 'lift',
  start: upright(0),
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6, band_m: 0.15, weight: 34 },
    { kind: 'contact', least: 0.8, weight: 33 },
    { kind: 'speed', most_m_s: 0.5, weight: 33 }
  ],
  visibility: 'seen',
  reference: lift(0, 26, 3),
  // Three hours for one: the last hour adds most.
  beginner: lift(0, 80, 2)
} satisfies Challenge;
