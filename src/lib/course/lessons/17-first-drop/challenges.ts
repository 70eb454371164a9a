import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, pause, upright } from '../../retrieves/moves';
import { castOut, deeperWith, JIGS } from '../fathomley';

export default [
  {
    id: 'watch-it-down',
    title: 'Watch it down',
    ask: 'Free spool, {20 ft|6 m}, {1/2 oz|14 g}. Watch the line. Lower the rod once it’s slack.',
    setup: deeperWith({ mass_kg: JIGS.half, start: castOut(ft(45)) }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 40,
    goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
    visibility: 'half_seen',
    reference: inTurn(held(45), pause(12), lift(45, 20, 1)),
    // Engaged and lifted on the drop.
    beginner: inTurn(held(45), pause(4), lift(45, 75, 0.6))
  },
  {
    id: 'bite-on-semi-slack',
    title: 'A bite on semi-slack',
    ask: 'Lift it, follow it down, then wait. When a fish takes it, reel down and set. Some casts have none.',
    setup: deeperWith({
      start: { bait_x_m: ft(45), slack_m: 0.03 },
      more: { bites: [{ t_s: 4, kind: 'moving off' }] }
    }),
    plane: 'lift',
    start: upright(30),
    hold_s: 2,
    longest_pause_s: 15,
    bite_between_s: [3.5, 9],
    goals: [
      { kind: 'strike', within_s: 2.5, weight: 60 },
      { kind: 'drag_first', least_m: 0.25, weight: 40 }
    ],
    visibility: 'unseen',
    reference: inTurn(lift(30, 45, 1), lift(45, 38, 1), pause(2.8), lift(38, 85, 0.6)),
    // Lifted again before anything took it.
    beginner: inTurn(lift(30, 45, 0.6), lift(45, 90, 0.5))
  }
] satisfies Challenge[];
