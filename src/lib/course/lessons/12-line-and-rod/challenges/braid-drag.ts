import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'braid-drag',
  title: 'One foot on braid',
  ask: 'Braid with a leader. Drag the jig {1 ft|30 cm}.',
  setup: deeperWith({
    line: {
      material: 'braid',
      diameter_m: 0.0002,
      leader: { material: 'fluorocarbon', diameter_m: 0.0003, length_m: 2 }
    },
    start: { bait_x_m: 18, slack_m: 0.05 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.3048, weight: 33 }
  ],
  visibility: 'half_seen',
  reference: sweep(60, 71, 3),
  // Too far: nothing stretches.
  beginner: sweep(60, 80, 0.8)
} satisfies Challenge;
