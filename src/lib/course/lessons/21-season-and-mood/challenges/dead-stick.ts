import type { Challenge } from '../../../../scoring';
import { inTurn, lowToTheSide, pause, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'dead-stick',
  title: 'Dead-stick',
  ask: 'Drag about {1 ft|30 cm}. Do nothing for 12 seconds or more. Drag on to {2 ft|60 cm}.',
  setup: deeperWith({ temperature_C: 7, start: { bait_x_m: 12, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  longest_pause_s: 30,
  goals: [
    { kind: 'rests', count: 1, least_s: 12, weight: 60 },
    { kind: 'travel', target_m: 0.6096, band_m: 0.2, weight: 20 },
    { kind: 'contact', least: 0.9, weight: 20 }
  ],
  visibility: 'half_seen',
  reference: inTurn(sweep(60, 70, 2.5), pause(14), sweep(70, 80, 2.5)),
  // A hand that cannot keep still.
  beginner: inTurn(sweep(60, 70, 2.5), pause(2), sweep(70, 80, 1.2), pause(2), sweep(80, 95, 1.2))
} satisfies Challenge;
