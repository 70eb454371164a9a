import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'through-grass',
  title: 'Through grass',
  ask: 'Grass loads the line and lets go. Drag the jig {2 ft|60 cm} through it.',
  setup: deeperWith({
    bottom: { ground: { kind: 'grass', seed: 4 } },
    start: { bait_x_m: 20, slack_m: 0.03 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6, band_m: 0.15, weight: 34 },
    { kind: 'contact', least: 0.7, weight: 33 },
    { kind: 'speed', most_m_s: 0.4, weight: 33 }
  ],
  visibility: 'half_seen',
  reference: sweep(60, 80, 8),
  // Stopped at the first load.
  beginner: sweep(60, 68, 2)
} satisfies Challenge;
