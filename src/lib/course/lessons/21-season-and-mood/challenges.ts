import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import {
  inTurn,
  lift,
  lowToTheSide,
  pause,
  reel,
  sweep,
  SWUM_UP,
  SWUM_UP_M,
  upright
} from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'cold-water',
    title: 'Cold water: drag and wait',
    ask: 'Three drags of about {1 ft|30 cm}, {3 ft|90 cm} in all. Rest 10 seconds or more between them.',
    setup: deeperWith({ temperature_C: 7, start: { bait_x_m: ft(40), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    longest_pause_s: 16,
    goals: [
      { kind: 'travel', target_m: 0.9144, band_m: 0.2, weight: 40 },
      { kind: 'rests', count: 2, least_s: 10, weight: 40 },
      { kind: 'contact', least: 0.9, weight: 20 }
    ],
    visibility: 'seen',
    reference: inTurn(
      sweep(60, 70, 2.5),
      pause(10.5),
      sweep(70, 80, 2.5),
      pause(10.5),
      sweep(80, 90, 2.5)
    ),
    // The same way without patience.
    beginner: inTurn(
      sweep(60, 70, 1.2),
      pause(0.5),
      sweep(70, 80, 1.2),
      pause(0.5),
      sweep(80, 90, 1.2)
    )
  },
  {
    id: 'dead-stick',
    title: 'Dead-stick',
    ask: 'Drag about {1 ft|30 cm}. Do nothing for 12 seconds or more. Drag on to {2 ft|60 cm}.',
    setup: deeperWith({ temperature_C: 7, start: { bait_x_m: ft(40), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    longest_pause_s: 30,
    goals: [
      { kind: 'rests', count: 1, least_s: 12, weight: 60 },
      { kind: 'travel', target_m: 0.6096, band_m: 0.2, weight: 20 },
      { kind: 'contact', least: 0.9, weight: 20 }
    ],
    visibility: 'half_seen',
    reference: inTurn(sweep(60, 70, 2.5), pause(14), sweep(70, 80, 2.5)),
    // A hand that cannot keep still.
    beginner: inTurn(sweep(60, 70, 2.5), pause(2), sweep(70, 80, 1.2), pause(2), sweep(80, 95, 1.2))
  },
  {
    id: 'swim-at-a-height',
    title: 'Swim it',
    ask: `Lift the jig off bottom and reel. Keep it ${SWUM_UP} up most of the way.`,
    setup: deeperWith({
      depth_m: ft(15),
      temperature_C: 21,
      start: { bait_x_m: ft(70), slack_m: 0.05 }
    }),
    plane: 'lift',
    start: upright(20),
    hold_s: 3,
    longest_pause_s: 5,
    goals: [{ kind: 'swim', height_m: [...SWUM_UP_M], least: 0.75, weight: 100 }],
    visibility: 'seen',
    reference: inTurn(lift(20, 75, 0.7), reel(2.2, 2.2), reel(3.75, 5)),
    // Reeled too slowly: it ploughs along the bottom.
    beginner: inTurn(lift(20, 30, 1), reel(3, 6))
  }
] satisfies Challenge[];
