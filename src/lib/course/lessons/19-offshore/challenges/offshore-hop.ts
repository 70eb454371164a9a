import type { Challenge } from '../../../../scoring';
import { inTurn, lift, upright } from '../../../retrieves/moves';
import { JIGS, waterWith } from '../../fathomley';

export default {
  id: 'offshore-hop',
  title: 'One hop, deep',
  ask: '{35 ft|10.5 m}, {3/4 oz|21 g}. Hop it once, {4 in to 2 ft|10 to 60 cm} up, and follow it down.',
  setup: waterWith({
    depth_m: 10.7,
    mass_kg: JIGS.threeQuarters,
    start: { bait_x_m: 15, slack_m: 0.03 }
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
} satisfies Challenge;
