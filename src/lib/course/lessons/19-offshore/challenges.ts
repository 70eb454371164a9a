import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, lowToTheSide, pause, sweep, upright } from '../../retrieves/moves';
import { castOut, JIGS, waterWith } from '../fathomley';

export default [
  {
    id: 'offshore-count',
    title: 'Count it deep',
    ask: 'Free spool, {35 ft|10.5 m}, {1 oz|28 g}. Count, and lower the rod when you think it’s down.',
    setup: waterWith({ depth_m: 10.7, mass_kg: JIGS.ounce, start: castOut(ft(45)) }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 60,
    goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
    visibility: 'unseen',
    reference: inTurn(held(45), pause(14.9), lift(45, 20, 1)),
    // The count of shallow water.
    beginner: inTurn(held(45), pause(6), lift(45, 20, 1))
  },
  {
    id: 'offshore-foot',
    title: 'One foot, deep',
    ask: '{35 ft|10.5 m}, {3/4 oz|21 g}, {60 ft|18 m} out. Drag it {1 ft|30 cm} on bottom.',
    setup: waterWith({
      depth_m: 10.7,
      mass_kg: JIGS.threeQuarters,
      start: { bait_x_m: ft(60), slack_m: 0.05 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.08, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.35, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 70.5, 4),
    // The quick hand of shallow water, and twice as far.
    beginner: sweep(60, 84, 0.6)
  },
  {
    id: 'offshore-hop',
    title: 'One hop, deep',
    ask: '{35 ft|10.5 m}, {3/4 oz|21 g}. Hop it once, {4 in to 2 ft|10 to 60 cm} up, and follow it down.',
    setup: waterWith({
      depth_m: 10.7,
      mass_kg: JIGS.threeQuarters,
      start: { bait_x_m: ft(50), slack_m: 0.03 }
    }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    goals: [
      { kind: 'hops', count: 1, height_m: [0.1, 0.6], weight: 34 },
      { kind: 'lowered', least: 0.6, weight: 34 },
      { kind: 'tip_speed', most_m_s: 4, weight: 32 }
    ],
    visibility: 'half_seen',
    reference: inTurn(lift(30, 47, 0.4), lift(47, 32, 1.2)),
    // A stroke where a hop was asked for, and the rod stays up.
    beginner: lift(30, 85, 0.5)
  }
] satisfies Challenge[];
