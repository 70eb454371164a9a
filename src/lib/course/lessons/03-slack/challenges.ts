import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import {
  inTurn,
  lift,
  lowToTheSide,
  pause,
  reel,
  sweep,
  times,
  upright
} from '../../retrieves/moves';
import { DRAG_MOST_M_S, waterWith } from '../fathomley';

export default [
  {
    id: 'through-the-slack',
    title: 'Through the slack',
    ask: 'There’s slack in the line. Move the jig {1 ft|30 cm} anyway, within {2 in|5 cm}.',
    setup: waterWith({ start: { bait_x_m: ft(45), slack_m: 0.4 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.05, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'seen',
    reference: sweep(60, 76, 2.25),
    // The move that is right on a tight line.
    beginner: sweep(60, 70, 3)
  },
  {
    id: 'reel-takes-slack',
    title: 'The reel takes the slack',
    ask: 'Drag the jig {2 ft|60 cm} with the rod. Swing the rod forward again. Reel up the slack without moving the jig.',
    setup: waterWith({ start: { bait_x_m: ft(40), slack_m: 0.03 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 4,
    longest_pause_s: 6,
    goals: [
      { kind: 'travel', target_m: 0.6096, band_m: 0.09, weight: 34 },
      { kind: 'reeled', least_m: 0.35, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'seen',
    reference: inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 2), reel(0.52, 2)),
    // The rod goes back and nobody reels: the next pull takes up slack.
    beginner: inTurn(sweep(60, 78, 4), pause(0.5), sweep(78, 60, 1.5))
  },
  {
    id: 'shake-in-place',
    title: 'Shake it in place',
    ask: 'Twitch the slack five times, a short rest after each. Keep the jig within {6 in|15 cm}.',
    setup: waterWith({ start: { bait_x_m: ft(40), slack_m: 1.2 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    longest_pause_s: 3,
    goals: [
      { kind: 'twitches', count: 5, weight: 50 },
      { kind: 'stayed', most_m: 0.15, weight: 50 }
    ],
    visibility: 'seen',
    reference: inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3))),
    // The weight is pulled, not the slack.
    beginner: inTurn(...times(3, lift(30, 65, 0.2), lift(65, 30, 0.2), pause(0.3)))
  }
] satisfies Challenge[];
