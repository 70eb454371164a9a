import type { Challenge } from '../../../../scoring';
import { inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'three-hops-even',
  title: 'Three hops, even',
  ask: 'Three hops, {3 to 10 in|8 to 25 cm} high, with the same rest between them.',
  setup: deeperWith({ start: { bait_x_m: 14, slack_m: 0.03 } }),
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
  reference: inTurn(lift(30, 42, 0.25), pause(3), lift(42, 53, 0.25), pause(3), lift(53, 63, 0.25)),
  // One after the other without a rest, and high.
  beginner: inTurn(
    lift(30, 55, 0.25),
    pause(0.4),
    lift(55, 80, 0.25),
    pause(0.4),
    lift(80, 95, 0.25)
  )
} satisfies Challenge;
