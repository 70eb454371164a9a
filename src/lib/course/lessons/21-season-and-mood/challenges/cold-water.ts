import type { Challenge } from '../../../../scoring';
import { inTurn, lowToTheSide, pause, sweep } from '../../../retrieves/moves';
import { deeperWith } from '../../fathomley';

export default {
  id: 'cold-water',
  title: 'Cold water: drag and wait',
  ask: 'Three drags of about {1 ft|30 cm}, {3 ft|90 cm} in all. Rest 4 seconds or more between them.',
  setup: deeperWith({ temperature_C: 7, start: { bait_x_m: 12, slack_m: 0.03 } }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  longest_pause_s: 8,
  goals: [
    { kind: 'travel', target_m: 0.9144, band_m: 0.2, weight: 40 },
    { kind: 'rests', count: 2, least_s: 4, weight: 40 },
    { kind: 'contact', least: 0.9, weight: 20 }
  ],
  visibility: 'seen',
  reference: inTurn(
    sweep(60, 70, 2.5),
    pause(4.5),
    sweep(70, 80, 2.5),
    pause(4.5),
    sweep(80, 90, 2.5)
  ),
  // The same way without patience.
  beginner: inTurn(
    sweep(60, 70, 1.2),
    pause(0.5),
    sweep(70, 80, 1.2),
    pause(0.5),
    sweep(80, 90, 1.2)
  )
} satisfies Challenge;
