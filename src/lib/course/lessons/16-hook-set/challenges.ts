import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, pause, reel, sweep } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'reel-down-and-sweep',
    title: 'Reel down, then sweep',
    ask: '{18 in|45 cm} of slack. When the fish taps, reel down until you feel the jig, then sweep firmly.',
    setup: deeperWith({
      start: { bait_x_m: ft(40), slack_m: 0.45 },
      more: { bites: [{ t_s: 3, kind: 'tap' }] }
    }),
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: 60 },
    hold_s: 2,
    longest_pause_s: 15,
    bite_between_s: [2.5, 9],
    goals: [
      { kind: 'strike', within_s: 3, weight: 60 },
      // What the jig pulls as it is dragged over this bottom.
      { kind: 'came_tight', least_N: 0.06, weight: 40 }
    ],
    visibility: 'seen',
    reference: inTurn(sweep(60, 60, 0.1), pause(3.8), reel(0.4, 0.6), sweep(60, 84, 0.6)),
    // Swept into the slack before anything bit.
    beginner: inTurn(sweep(60, 60, 0.1), pause(1), sweep(60, 80, 0.6))
  },
  {
    id: 'set-on-fish-not-rock',
    title: 'Set on fish, not on rock',
    ask: 'Drag about {1 ft|30 cm} over rock, then hold still. Sweep for a fish, and only for a fish. Some casts have none.',
    setup: deeperWith({
      bottom: {
        friction: 0.4,
        stones: [
          { x_m: 11.75, width_m: 0.16, height_m: 0.04 },
          { x_m: 11.5, width_m: 0.2, height_m: 0.05 }
        ]
      },
      start: { bait_x_m: ft(40), slack_m: 0.03 },
      more: { bites: [{ t_s: 6, kind: 'tap' }] }
    }),
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: 40 },
    hold_s: 2,
    longest_pause_s: 15,
    bite_between_s: [5.5, 12],
    goals: [
      { kind: 'strike', within_s: 2.2, weight: 60 },
      { kind: 'drag_first', least_m: 0.3, weight: 40 }
    ],
    visibility: 'unseen',
    reference: inTurn(sweep(40, 55, 4), pause(3), sweep(55, 81, 0.6)),
    // The first rock is taken for a fish.
    beginner: inTurn(sweep(40, 46, 2), sweep(46, 96, 0.6))
  }
] satisfies Challenge[];
