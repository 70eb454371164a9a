import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, lift, pause, reel, upright } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'drag-wait-hop',
    title: 'Cool water: drag, wait, hop',
    ask: '{55 °F|13 °C} water. Lift slowly, so it slides along bottom. Wait 3 seconds or more, then one hop, {3 to 8 in|8 to 20 cm} high, and lower the rod.',
    setup: deeperWith({ temperature_C: 13, start: { bait_x_m: ft(40), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(20),
    hold_s: 3,
    // Ten seconds is a wait of this map.
    longest_pause_s: 13,
    goals: [
      { kind: 'hops', count: 1, height_m: [0.08, 0.2], weight: 40 },
      { kind: 'rests', count: 1, least_s: 3, weight: 30 },
      { kind: 'drag_first', least_m: 0.2, weight: 30 }
    ],
    visibility: 'half_seen',
    reference: inTurn(lift(20, 32, 3), pause(4), lift(32, 43, 0.25), lift(43, 34, 0.6)),
    // Summer’s hand: no drag and no wait, and up it goes.
    beginner: inTurn(lift(20, 50, 0.3), pause(1), lift(50, 75, 0.3))
  },
  {
    id: 'two-strokes',
    title: 'Warm water: two strokes',
    ask: '{80 °F|27 °C}, fish on the chase. Two strokes, {2 to 5 ft|60 cm to 1.5 m} high. Reel up the slack between them.',
    setup: deeperWith({ temperature_C: 27, start: { bait_x_m: ft(40), slack_m: 0.03 } }),
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
      lift(15, 85, 0.525),
      pause(0.1),
      lift(85, 15, 2.1),
      pause(1),
      reel(1, 2),
      lift(15, 85, 0.525),
      pause(0.1),
      lift(85, 15, 2.1)
    ),
    // Winter’s hand: it never leaves the bottom.
    beginner: inTurn(lift(15, 30, 3), pause(3), lift(30, 45, 3))
  }
] satisfies Challenge[];
