import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith, JIGS } from '../../fathomley';

export default {
  id: 'heavy-in-deep-water',
  title: 'Heavy and deep',
  ask: 'Drag {1 oz|28 g} {2 ft|60 cm} in {30 ft|9 m} of water.',
  setup: waterWith({ depth_m: 9.14, mass_kg: JIGS.ounce, start: { bait_x_m: 18, slack_m: 0.05 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.45, weight: 33 }
  ],
  visibility: 'half_seen',
  reference: sweep(60, 80, 4),
  // Too short by half: the line’s bow takes the rest.
  beginner: sweep(60, 70, 2)
} satisfies Challenge;
