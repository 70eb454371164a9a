import type { Challenge } from '../../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../../retrieves/moves';
import { waterWith, castOut } from '../../fathomley';

export default {
  id: 'fall-on-a-following-rod',
  title: 'A fall that stays out',
  ask: 'In {11 ft|3.3 m}, reel engaged. Follow the falling jig with the rod so it doesn’t swing in.',
  setup: waterWith({ start: castOut(14, 'closed') }),
  plane: 'lift',
  start: upright(70),
  hold_s: 6,
  longest_pause_s: 15,
  goals: [
    { kind: 'swing', most_m: 0.6, weight: 50 },
    { kind: 'follow', least: 0.5, weight: 50 }
  ],
  visibility: 'seen',
  reference: inTurn(held(70), lift(70, 0, 4)),
  // The rod is held: the tight line swings the jig in.
  beginner: inTurn(held(70), pause(4))
} satisfies Challenge;
