import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, pause, reel, sweep } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'strike-a-tap',
    title: 'Set on a tap',
    ask: 'Drag {6 in|15 cm} or more, slowly, line tight. When the tap comes, sweep firmly. Some casts have none.',
    setup: deeperWith({
      start: { bait_x_m: ft(40), slack_m: 0.03 },
      more: { bites: [{ t_s: 4, kind: 'tap' }] }
    }),
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: 40 },
    hold_s: 2,
    longest_pause_s: 10,
    bite_between_s: [3.5, 9],
    goals: [
      { kind: 'strike', within_s: 2, weight: 60 },
      { kind: 'drag_first', least_m: 0.15, weight: 40 }
    ],
    visibility: 'seen',
    reference: inTurn(sweep(40, 50, 3), pause(1.7), sweep(50, 76, 0.6)),
    // The tap is taken for a stone.
    beginner: inTurn(sweep(40, 50, 3), pause(4), sweep(50, 58, 2))
  },
  {
    id: 'strike-a-lost-weight',
    title: 'Lost weight',
    ask: 'Drag {6 in|15 cm} or more, then wait. When the weight goes away, reel down and sweep. Some casts have none.',
    setup: deeperWith({
      start: { bait_x_m: ft(40), slack_m: 0.03 },
      more: { bites: [{ t_s: 6, kind: 'weight gone' }] }
    }),
    plane: 'sweep',
    start: { elevation_deg: 0, azimuth_deg: 40 },
    hold_s: 2,
    longest_pause_s: 15,
    bite_between_s: [4.5, 10],
    goals: [
      { kind: 'strike', within_s: 2.5, weight: 60 },
      { kind: 'drag_first', least_m: 0.15, weight: 40 }
    ],
    visibility: 'unseen',
    reference: inTurn(sweep(40, 50, 3), pause(4), reel(0.2, 0.25), sweep(50, 76, 0.6)),
    // Struck before anything had happened.
    beginner: inTurn(sweep(40, 50, 3), sweep(50, 96, 0.6))
  }
] satisfies Challenge[];
