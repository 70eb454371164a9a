import type { Challenge } from '../../../../scoring';
import { inTurn, pause, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'three-hops-sideways',
  title: 'Three hops, sideways',
  ask: 'Rod to the side: three low hops, {1 to 8 in|3 to 20 cm} high.',
  setup: deeperWith({ start: { bait_x_m: 14, slack_m: 0.03 } }),
  plane: 'sweep',
  start: { elevation_deg: 0, azimuth_deg: 50 },
  hold_s: 3,
  longest_pause_s: 5,
  goals: [
    { kind: 'hops', count: 3, height_m: [0.03, 0.2], weight: 38 },
    { kind: 'rests', count: 2, least_s: 1.2, weight: 31 },
    { kind: 'rhythm', even: true, weight: 31 }
  ],
  visibility: 'seen',
  reference: inTurn(
    sweep(50, 62, 0.28),
    pause(3),
    sweep(62, 74, 0.28),
    pause(3),
    sweep(74, 86, 0.28)
  ),
  // Drags where hops were asked for.
  beginner: inTurn(sweep(50, 62, 2), pause(0.5), sweep(62, 74, 2), pause(0.5), sweep(74, 86, 2))
} satisfies Challenge;
