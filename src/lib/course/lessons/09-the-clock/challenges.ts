import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, lift, upright } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'one-hour',
    title: 'One hour',
    ask: 'From nine o’clock, lift slowly until the jig has come {2 ft|60 cm}.',
    setup: deeperWith({ start: { bait_x_m: ft(90), slack_m: 0.05 } }),
    plane: 'lift',
    start: upright(0),
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.15, weight: 34 },
      { kind: 'contact', least: 0.8, weight: 33 },
      { kind: 'speed', most_m_s: 0.5, weight: 33 }
    ],
    visibility: 'seen',
    reference: lift(0, 26, 3),
    // Three hours for one: the last hour adds most.
    beginner: lift(0, 80, 2)
  },
  {
    id: 'late-hour',
    title: 'A late hour',
    ask: 'From ten o’clock, lift slowly until the jig has come {3 ft|90 cm}.',
    setup: deeperWith({ start: { bait_x_m: ft(90), slack_m: 0.05 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.9144, band_m: 0.2, weight: 34 },
      { kind: 'contact', least: 0.8, weight: 33 },
      { kind: 'speed', most_m_s: 0.5, weight: 33 }
    ],
    visibility: 'seen',
    reference: lift(30, 59, 5),
    // Two hours for one.
    beginner: lift(30, 90, 2)
  },
  {
    id: 'lift-and-follow',
    title: 'Lift and follow it down',
    ask: 'Lift the jig {6 to 18 in|15 to 45 cm} off bottom. Lower the rod as it falls.',
    setup: deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(10),
    hold_s: 3,
    goals: [
      { kind: 'hops', count: 1, height_m: [0.15, 0.45], weight: 34 },
      { kind: 'lowered', least: 0.6, weight: 33 },
      { kind: 'tip_speed', most_m_s: 4, weight: 33 }
    ],
    visibility: 'seen',
    reference: inTurn(lift(10, 40, 0.55), lift(40, 12, 1.4)),
    // Lifted too far, and held: it swings in on a tight line.
    beginner: lift(10, 72, 0.5)
  }
] satisfies Challenge[];
