import type { Challenge } from '../../../scoring';
import { inTurn, lift, lowToTheSide, pause, sweep, times, upright } from '../../retrieves/moves';
import { hangs } from './crack';

export default [
  {
    id: 'free-a-snag',
    title: 'Free a snag',
    ask: 'Drag until it hangs in the rock. Stop, give slack, shake it free, gently.',
    setup: hangs,
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    longest_pause_s: 6,
    goals: [
      { kind: 'freed', weight: 60 },
      { kind: 'tip_speed', most_m_s: 5, weight: 40 }
    ],
    visibility: 'seen',
    reference: inTurn(
      sweep(60, 80, 1),
      pause(0.5),
      sweep(80, 60, 1),
      ...times(3, pause(0.7), sweep(60, 71, 0.4), sweep(71, 60, 0.4))
    ),
    // It hangs, and is pulled harder: it wedges.
    beginner: inTurn(sweep(60, 80, 1), pause(0.5), sweep(80, 112, 1))
  },
  {
    id: 'free-from-above',
    title: 'Pull from higher up',
    ask: 'Raise the rod until the jig hangs. Stop. Rod down, slack. Then lift high and gently: it pulls from higher up.',
    setup: hangs,
    plane: 'lift',
    start: upright(0),
    hold_s: 2,
    longest_pause_s: 6,
    goals: [
      { kind: 'freed', weight: 60 },
      { kind: 'tip_speed', most_m_s: 3, weight: 40 }
    ],
    visibility: 'seen',
    reference: inTurn(lift(0, 22, 0.7), pause(0.5), lift(22, 0, 1), pause(1), lift(0, 55, 4)),
    // It hangs, and is hauled at: it wedges before the line stands steeper.
    beginner: lift(0, 60, 0.7)
  }
] satisfies Challenge[];
