import type { Challenge } from '../../../../scoring';
import { lowToTheSide } from '../../../retrieves/moves';
import { fathomley } from '../../fathomley';

export default {
  id: 'exactly-one-foot',
  title: 'Exactly one foot',
  ask: 'Drag the jig {1 ft|30 cm}, within {2 in|5 cm}. Keep it on bottom.',
  setup: fathomley,
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.3048, weight: 33 }
  ],
  visibility: 'seen',
  reference: { kind: 'sweep', from_deg: 60, to_deg: 70, duration_s: 2.5, elevation_deg: 0 },
  // A quick, wide pull: the hand that goes by the rod's handle and not by its tip.
  beginner: { kind: 'sweep', from_deg: 60, to_deg: 80, duration_s: 0.6, elevation_deg: 0 }
} satisfies Challenge;
