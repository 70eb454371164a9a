import type { Challenge } from '../../../../scoring';
import { inTurn, lift, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'one-hop',
  title: 'One hop',
  ask: 'Hop the jig once, {3 to 8 in|8 to 20 cm} high. Lower the rod with it.',
  setup: deeperWith({ start: { bait_x_m: 14, slack_m: 0.03 } }),
  plane: 'lift',
  start: upright(30),
  hold_s: 3,
  goals: [
    { kind: 'hops', count: 1, height_m: [0.08, 0.2], weight: 34 },
    { kind: 'lowered', least: 0.6, weight: 33 },
    { kind: 'tip_speed', most_m_s: 3.3, weight: 33 }
  ],
  visibility: 'seen',
  reference: inTurn(lift(30, 42, 0.25), lift(42, 32, 0.6)),
  // Three times as high as was meant.
  beginner: lift(30, 72, 0.3)
} satisfies Challenge;
