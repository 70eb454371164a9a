import type { Challenge } from '../../../../scoring';
import { inTurn, lift, pause, times, upright } from '../../../retrieves/moves';
import { waterWith } from '../../fathomley';

export default {
  id: 'shake-in-place',
  title: 'Shake it in place',
  ask: 'Twitch the slack five times, a short rest after each. Keep the jig within {6 in|15 cm}.',
  setup: waterWith({ start: { bait_x_m: 12, slack_m: 1.2 } }),
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
} satisfies Challenge;
