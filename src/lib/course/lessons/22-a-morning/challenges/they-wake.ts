import type { Challenge } from '../../../../scoring';
import { inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'they-wake',
  title: 'They wake up',
  ask: '{65 °F|18 °C}, fish on the move. Three even hops, {3 to 10 in|8 to 25 cm} high, unseen.',
  setup: deeperWith({ temperature_C: 18, start: { bait_x_m: 10, slack_m: 0.03 } }),
  plane: 'lift',
  start: upright(30),
  hold_s: 3,
  longest_pause_s: 5,
  goals: [
    { kind: 'hops', count: 3, height_m: [0.08, 0.25], weight: 60 },
    { kind: 'rhythm', even: true, weight: 40 }
  ],
  visibility: 'unseen',
  reference: inTurn(lift(30, 42, 0.25), pause(3), lift(42, 53, 0.25), pause(3), lift(53, 63, 0.25)),
  // Snaps: too much of a good thing.
  beginner: inTurn(lift(30, 60, 0.25), pause(2), lift(60, 90, 0.25))
} satisfies Challenge;
