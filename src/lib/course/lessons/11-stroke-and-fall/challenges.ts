import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../retrieves/moves';
import { castOut, fathomley, waterWith } from '../fathomley';

export default [
  {
    id: 'stroke',
    title: 'The stroke',
    ask: 'In {10 ft|3 m}, snap the jig {2 to 5 ft|60 cm to 1.5 m} up. Lower the rod with it as it falls.',
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
  },
  {
    id: 'fall-on-a-following-rod',
    title: 'A fall that stays out',
    ask: 'In {10 ft|3 m}, reel engaged: it gives no line. Follow the falling jig with the rod so it doesn’t swing in.',
    setup: waterWith({ start: castOut(ft(45), 'closed') }),
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
  }
] satisfies Challenge[];
