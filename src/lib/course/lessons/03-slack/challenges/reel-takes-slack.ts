import type { Challenge } from '../../../../scoring';
import { inTurn, lowToTheSide, pause, reel, sweep } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'reel-takes-slack',
  title: 'The reel takes the slack',
  ask: 'Drag the jig {2 ft|60 cm} with the rod. Turn the rod back. Reel up the slack without moving the jig.',
  setup: waterWith({ start: { bait_x_m: 12, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 4,
  longest_pause_s: 6,
  goals: [
    { kind: 'travel', target_m: 0.6096, band_m: 0.09, weight: 34 },
    { kind: 'reeled', least_m: 0.35, weight: 33 },
    { kind: 'speed', most_m_s: 0.45, weight: 33 }
  ],
  visibility: 'seen',
  reference: inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 1.5), reel(0.52, 2)),
  // The rod goes back and nobody reels: the next pull takes up slack.
  beginner: inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 1.5))
} satisfies Challenge;
