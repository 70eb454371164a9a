import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { hopLowered, inTurn, lift, pause, sweep, threeHops, upright } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

const sideways = {
  id: 'three-hops-sideways',
  title: 'Three hops, sideways',
  ask: 'Rod to the side: three low hops, {1 to 8 in|3 to 20 cm} high.',
  setup: deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 50 },
  hold_s: 3,
  longest_pause_s: 5,
  goals: [
    { kind: 'hops', count: 3, height_m: [0.03, 0.2], weight: 38 },
    { kind: 'rests', count: 2, least_s: 1.2, weight: 31 },
    { kind: 'rhythm', even: true, weight: 31 }
  ],
  visibility: 'seen',
  reference: inTurn(
    sweep(50, 62, 0.28),
    pause(3),
    sweep(62, 74, 0.28),
    pause(3),
    sweep(74, 86, 0.28)
  ),
  // Drags where hops were asked for.
  beginner: inTurn(sweep(50, 62, 2), pause(0.5), sweep(62, 74, 2), pause(0.5), sweep(74, 86, 2))
} satisfies Challenge;

export default [
  {
    id: 'one-hop',
    title: 'One hop',
    ask: 'Hop the jig once, {3 to 8 in|8 to 20 cm} high. Lower the rod with it.',
    setup: deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    goals: [
      { kind: 'hops', count: 1, height_m: [0.08, 0.2], weight: 34 },
      { kind: 'lowered', least: 0.6, weight: 33 },
      { kind: 'tip_speed', most_m_s: 3.65, weight: 33 }
    ],
    visibility: 'seen',
    reference: hopLowered,
    // Three times as high as was meant.
    beginner: lift(30, 72, 0.3)
  },
  {
    id: 'three-hops-even',
    title: 'Three hops, even',
    ask: 'Three hops, {3 to 10 in|8 to 25 cm} high, with the same rest between them. Leave the rod up as you rest: each hop starts where the last one ended.',
    setup: deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    longest_pause_s: 5,
    goals: [
      { kind: 'hops', count: 3, height_m: [0.08, 0.25], weight: 38 },
      { kind: 'rests', count: 2, least_s: 1.2, weight: 31 },
      { kind: 'rhythm', even: true, weight: 31 }
    ],
    visibility: 'seen',
    reference: threeHops,
    // One after the other without a rest, and high.
    beginner: inTurn(
      lift(30, 55, 0.25),
      pause(0.4),
      lift(55, 80, 0.25),
      pause(0.4),
      lift(80, 95, 0.25)
    )
  },
  {
    id: 'three-hops-uneven',
    title: 'Three hops, uneven',
    ask: 'Three hops, {3 to 10 in|8 to 25 cm} high. Make one rest at least twice the other, rod left up.',
    setup: deeperWith({ start: { bait_x_m: ft(45), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    longest_pause_s: 10,
    goals: [
      { kind: 'hops', count: 3, height_m: [0.08, 0.25], weight: 38 },
      { kind: 'rests', count: 2, least_s: 1.2, weight: 31 },
      { kind: 'rhythm', even: false, weight: 31 }
    ],
    visibility: 'half_seen',
    reference: inTurn(
      lift(30, 42, 0.25),
      pause(3),
      lift(42, 53, 0.25),
      pause(8),
      lift(53, 63, 0.25)
    ),
    // Hurried, and every one too high.
    beginner: inTurn(
      lift(30, 55, 0.25),
      pause(0.4),
      lift(55, 80, 0.25),
      pause(0.4),
      lift(80, 95, 0.25)
    )
  },
  sideways
] satisfies Challenge[];
