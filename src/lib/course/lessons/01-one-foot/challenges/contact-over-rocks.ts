import type { Challenge } from '../../../../scoring';
import { lowToTheSide } from '../../../retrieves/moves';
import { fathomley } from '../../fathomley';

export default {
  id: 'contact-over-rocks',
  title: 'Keep contact over rocks',
  ask: 'Drag the jig {3 ft|90 cm} over three rocks and touch each one.',
  setup: {
    ...fathomley,
    bottom: {
      friction: 0.4,
      stones: [
        { x_m: 9.75, width_m: 0.24, height_m: 0.04 },
        { x_m: 9.45, width_m: 0.3, height_m: 0.06 },
        { x_m: 9.22, width_m: 0.2, height_m: 0.03 }
      ]
    }
  },
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'stones', touched: [0, 1, 2], weight: 33 },
    { kind: 'contact', least: 0.8, weight: 34 },
    { kind: 'travel', target_m: 0.9144, band_m: 0.15, weight: 33 }
  ],
  visibility: 'seen',
  reference: { kind: 'sweep', from_deg: 60, to_deg: 88, duration_s: 6, elevation_deg: 0 },
  // The same way in a fifth of the time: it clears what it should have felt.
  beginner: { kind: 'sweep', from_deg: 60, to_deg: 88, duration_s: 1.2, elevation_deg: 0 }
} satisfies Challenge;
