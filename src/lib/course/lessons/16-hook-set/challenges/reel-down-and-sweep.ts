import type { Challenge } from '../../../../scoring';
import { inTurn, pause, reel, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'reel-down-and-sweep',
  title: 'Reel down, then sweep',
  ask: '{18 in|45 cm} of slack. When the fish taps, reel down, then sweep, so the jig comes {2 ft|60 cm}.',
  setup: deeperWith({
    start: { bait_x_m: 12, slack_m: 0.45 },
    more: { bites: [{ t_s: 3, kind: 'tap' }] }
  }),
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 60 },
  hold_s: 2,
  longest_pause_s: 15,
  goals: [
    { kind: 'strike', within_s: 3, weight: 60 },
    { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 40 }
  ],
  visibility: 'seen',
  reference: inTurn(sweep(60, 60, 0.1), pause(3.4), reel(0.4, 1), sweep(60, 84, 0.6)),
  // Swept into the slack before anything bit.
  beginner: inTurn(sweep(60, 60, 0.1), pause(1), sweep(60, 80, 0.6))
} satisfies Challenge;
