import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, pause, reel, upright } from '../../retrieves/moves';
import { castOut, deeperWith, JIGS } from '../fathomley';

export default [
  {
    id: 'taken-on-the-drop',
    title: 'Eaten on the drop',
    ask: 'It falls {20 ft|6 m} on slack line. If it runs off, reel down and set. Nothing at your count of 12? It’s down: lower the rod.',
    setup: deeperWith({
      mass_kg: JIGS.half,
      start: { ...castOut(ft(45), 'closed'), slack_m: 3 },
      more: { bites: [{ t_s: 5, kind: 'moving off' }] }
    }),
    plane: 'lift',
    start: upright(30),
    hold_s: 2,
    longest_pause_s: 30,
    bite_between_s: [3, 9],
    goals: [
      { kind: 'strike', within_s: 3, weight: 60 },
      { kind: 'bottom_first', within_s: 4, weight: 40 }
    ],
    visibility: 'seen',
    reference: inTurn(held(30), pause(5.4), reel(0.5, 1), lift(30, 80, 0.6)),
    if_blank: inTurn(held(30), pause(13.5), lift(30, 10, 1)),
    // Set on nothing, before anything took it.
    beginner: inTurn(held(30), pause(1.5), lift(30, 80, 0.6))
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
    reference: inTurn(
      lift(30, 45, 1),
      lift(45, 38, 1),
      pause(2.8),
      reel(0.2, 0.25),
      lift(38, 85, 0.6)
    ),
    // Lifted again before anything took it.
    beginner: inTurn(lift(30, 45, 0.6), lift(45, 90, 0.5))
  }
] satisfies Challenge[];
