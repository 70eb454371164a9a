import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith, JIGS } from '../../fathomley';

export default {
  id: 'first-light',
  title: 'First light',
  ask: '{50 °F|9 °C}, fish hardly moving, {20 ft|6 m} deep. Drag it {1 ft|30 cm}, slow, unseen, on bottom.',
  setup: deeperWith({
    depth_m: 6,
    temperature_C: 9,
    mass_kg: JIGS.half,
    start: { bait_x_m: 16, slack_m: 0.05 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 34 },
    { kind: 'pace', m_s: [0.04, 0.3], weight: 33 },
    { kind: 'contact', least: 0.9, weight: 33 }
  ],
  visibility: 'unseen',
  reference: sweep(60, 71, 3),
  // The hand of yesterday’s warm afternoon.
  beginner: sweep(60, 85, 0.8)
} satisfies Challenge;
