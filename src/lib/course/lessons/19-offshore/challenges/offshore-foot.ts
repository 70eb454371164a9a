import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { JIGS, waterWith } from '../../fathomley';

export default {
  id: 'offshore-foot',
  title: 'One foot, deep',
  ask: '{35 ft|10.5 m}, {3/4 oz|21 g}, {60 ft|18 m} out. Drag it {1 ft|30 cm} on bottom, unseen.',
  setup: waterWith({
    depth_m: 10.7,
    mass_kg: JIGS.threeQuarters,
    start: { bait_x_m: 18, slack_m: 0.05 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.08, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.35, weight: 33 }
  ],
  visibility: 'unseen',
  reference: sweep(60, 70.5, 4),
  // The quick hand of shallow water, and twice as far.
  beginner: sweep(60, 84, 0.6)
} satisfies Challenge;
