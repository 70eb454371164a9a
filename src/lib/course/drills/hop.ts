import { ft } from '../items/draw';
import { waterWith } from '../lessons/fathomley';
import { inTurn, lift, upright } from '../retrieves/moves';
import type { Condition, Drill } from './drill';

/** Three heights, each with the lift that reaches it in a quarter of a second and half as much again of its tip's speed; two depths. */
const HOPS = [
  { height_m: [0.05, 0.15], height: '{2 to 6 in|5 to 15 cm}', turn_deg: 10, most_tip_m_s: 3 },
  { height_m: [0.15, 0.3], height: '{6 to 12 in|15 to 30 cm}', turn_deg: 15, most_tip_m_s: 4.5 },
  { height_m: [0.3, 0.6], height: '{1 to 2 ft|30 to 60 cm}', turn_deg: 28, most_tip_m_s: 7 }
] as const;
const DEPTHS = [
  { depth_m: ft(10), depth: '{10 ft|3 m}' },
  { depth_m: ft(15), depth: '{15 ft|4.5 m}' }
];
const FRESH: Hop = { hop: HOPS[1], depth_m: ft(12), depth: '{12 ft|3.6 m}' };

const FROM_DEG = 30;
const LIFT_S = 0.25;

interface Hop {
  hop: (typeof HOPS)[number];
  depth_m: number;
  /** As it is said in either units. */
  depth: string;
}

function hopOf({ hop, depth_m, depth }: Hop): Condition {
  const [low, high] = hop.height_m;
  const top_deg = FROM_DEG + hop.turn_deg;
  return () => ({
    title: 'A hop',
    ask: `${depth} of water. Hop the jig once, ${hop.height} up, and follow it down.`,
    setup: waterWith({ depth_m, start: { bait_x_m: ft(30), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(FROM_DEG),
    hold_s: 3,
    goals: [
      { kind: 'hops', count: 1, height_m: [low, high], weight: 34 },
      { kind: 'lowered', least: 0.6, weight: 33 },
      { kind: 'tip_speed', most_m_s: hop.most_tip_m_s, weight: 33 }
    ],
    reference: inTurn(lift(FROM_DEG, top_deg, LIFT_S), lift(top_deg, FROM_DEG + 2, 0.8)),
    // A lift where a hop was asked for: over the heads of the fish.
    beginner: lift(FROM_DEG, FROM_DEG + 2.2 * hop.turn_deg + 10, LIFT_S)
  });
}

export const hop: Drill = {
  id: 'hop',
  title: 'Hop it as high as asked',
  lesson: 'hops',
  asks: 'height',
  practised: DEPTHS.flatMap((depth) => HOPS.map((hop) => hopOf({ hop, ...depth }))),
  fresh: [hopOf(FRESH)]
};
