import type { Challenge } from '../../../../scoring';
import { inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { fathomley } from '../../fathomley';

export default {
  id: 'stroke',
  title: 'The stroke',
  ask: 'In {11 ft|3.3 m}, snap the jig {2 to 5 ft|60 cm to 1.5 m} up. Lower the rod with it as it falls.',
  setup: fathomley,
  plane: 'lift',
  start: upright(15),
  hold_s: 4,
  goals: [
    { kind: 'hops', count: 1, height_m: [0.61, 1.52], weight: 34 },
    { kind: 'lowered', least: 0.6, weight: 33 },
    { kind: 'tip_speed', most_m_s: 9, weight: 33 }
  ],
  visibility: 'seen',
  reference: inTurn(lift(15, 75, 0.45), pause(0.1), lift(75, 20, 1.8)),
  // Half a snap, and the rod stays up: a pendulum.
  beginner: lift(15, 38, 0.5)
} satisfies Challenge;
