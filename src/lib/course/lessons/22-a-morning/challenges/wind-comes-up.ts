import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith, JIGS } from '../../fathomley';

export default {
  id: 'wind-comes-up',
  title: 'Wind comes up',
  ask: 'Wind bows your line. Move the jig {2 ft|60 cm} anyway.',
  setup: deeperWith({
    mass_kg: JIGS.threeQuarters,
    start: { bait_x_m: 18, slack_m: 0.2 },
    more: { wind_m_s: 6 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6, band_m: 0.12, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.4, weight: 33 }
  ],
  visibility: 'unseen',
  reference: sweep(60, 82, 5),
  // Bow and slack forgotten.
  beginner: sweep(60, 71, 3)
} satisfies Challenge;
