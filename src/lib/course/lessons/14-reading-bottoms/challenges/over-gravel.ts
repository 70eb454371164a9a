import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'over-gravel',
  title: 'Over gravel',
  ask: 'Drag the jig {3 ft|90 cm} over gravel, slow enough to feel it tick.',
  setup: deeperWith({
    bottom: { ground: { kind: 'gravel', seed: 5 } },
    start: { bait_x_m: 20, slack_m: 0.03 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 2,
  goals: [
    { kind: 'travel', target_m: 0.9144, band_m: 0.15, weight: 60 },
    { kind: 'contact', least: 0.7, weight: 40 }
  ],
  visibility: 'unseen',
  reference: sweep(60, 87.5, 6),
  // Too fast to feel one pebble from the next.
  beginner: sweep(60, 80, 0.7)
} satisfies Challenge;
