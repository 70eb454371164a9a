import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { fathomley } from '../../fathomley';

export default {
  id: 'exactly-two-feet',
  title: 'Exactly two feet',
  ask: 'Drag the jig {2 ft|60 cm}, within {3½ in|9 cm}. Keep it on bottom.',
  setup: fathomley,
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6096, band_m: 0.09, weight: 34 },
    { kind: 'contact', least: 0.9, weight: 33 },
    { kind: 'speed', most_m_s: 0.4, weight: 33 }
  ],
  visibility: 'seen',
  reference: sweep(60, 79, 4),
  // The right way in no time: it flies.
  beginner: sweep(60, 90, 0.8)
} satisfies Challenge;
