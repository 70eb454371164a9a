import type { Challenge } from '../../../../scoring';
import { inTurn, lift, reel, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'swim-at-a-height',
  title: 'Swim it',
  ask: 'Lift the jig off bottom and reel. Keep it {6 in to 3 ft|15 to 90 cm} up most of the way.',
  setup: deeperWith({ depth_m: 4.5, temperature_C: 21, start: { bait_x_m: 22, slack_m: 0.05 } }),
  plane: 'lift',
  start: upright(20),
  hold_s: 3,
  longest_pause_s: 5,
  goals: [{ kind: 'swim', height_m: [0.1524, 0.9144], least: 0.75, weight: 100 }],
  visibility: 'seen',
  reference: inTurn(lift(20, 75, 0.7), reel(2.2, 2.2), reel(3.75, 5)),
  // Reeled too slowly: it ploughs along the bottom.
  beginner: inTurn(lift(20, 30, 1), reel(3, 6))
} satisfies Challenge;
