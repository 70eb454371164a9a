import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, lift, lowToTheSide, sweep, upright } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'soft-rod-hop',
    title: 'A hop with a soft rod',
    ask: 'Soft rod, mono line. Hop the jig once, {3 to 10 in|8 to 25 cm} high. Lower the rod with it.',
    setup: deeperWith({
      tip_stiffness_N_per_m: 8,
      line: { material: 'nylon', diameter_m: 0.00032 }
    }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    goals: [
      { kind: 'hops', count: 1, height_m: [0.08, 0.25], weight: 28 },
      { kind: 'lowered', least: 0.6, weight: 28 },
      // A soft rod is the one that a jerk loads.
      { kind: 'tip_speed', most_m_s: 3, weight: 44 }
    ],
    visibility: 'seen',
    reference: inTurn(lift(30, 42, 0.3), lift(42, 31, 0.6)),
    // A snap: the rod stores it and throws.
    beginner: lift(30, 75, 0.25)
  },
  {
    id: 'braid-drag',
    title: 'One foot on braid',
    ask: 'Braid with a leader. Drag the jig {1 ft|30 cm}.',
    setup: deeperWith({
      line: {
        material: 'braid',
        diameter_m: 0.00023,
        leader: { material: 'fluorocarbon', diameter_m: 0.00028, length_m: 2 }
      },
      start: { bait_x_m: ft(60), slack_m: 0.05 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.3048, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 71, 3),
    // Too far: nothing stretches.
    beginner: sweep(60, 80, 0.8)
  }
] satisfies Challenge[];
