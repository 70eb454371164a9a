import type { Challenge } from '../../../../scoring';
import { inTurn, lift, pause, reel, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'two-strokes',
  title: 'Warm water: two strokes',
  ask: '{80 °F|26 °C}, fish on the chase. Two strokes, {2 to 5 ft|60 cm to 1.5 m} high. Reel up the slack after each.',
  setup: deeperWith({ temperature_C: 26, start: { bait_x_m: 12, slack_m: 0.03 } }),
  plane: 'lift',
  start: upright(15),
  hold_s: 3,
  longest_pause_s: 5,
  goals: [
    { kind: 'hops', count: 2, height_m: [0.61, 1.52], weight: 45 },
    { kind: 'reeled', least_m: 0.5, weight: 20 },
    { kind: 'tip_speed', most_m_s: 9, weight: 35 }
  ],
  visibility: 'unseen',
  reference: inTurn(
    lift(15, 75, 0.45),
    pause(0.1),
    lift(75, 15, 1.8),
    pause(1),
    reel(1, 2),
    lift(15, 75, 0.45),
    pause(0.1),
    lift(75, 15, 1.8)
  ),
  // Winter’s hand: it never leaves the bottom.
  beginner: inTurn(lift(15, 30, 3), pause(3), lift(30, 45, 3))
} satisfies Challenge;
