import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { waterWith, JIGS } from '../../fathomley';

export default {
  id: 'light-and-slow',
  title: 'Light and slow',
  ask: 'In {11 ft|3.3 m}, drag {1/4 oz|7 g} {2 ft|60 cm}, slower than {0.7 ft|22 cm} a second. Keep it on bottom.',
  setup: waterWith({ mass_kg: JIGS.quarter }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 3,
  goals: [
    { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 31 },
    { kind: 'contact', least: 0.9, weight: 31 },
    // A button that is held goes a foot a second: that is a heavy jig's pace.
    { kind: 'pace', m_s: [0.03, 0.22], weight: 38 }
  ],
  visibility: 'seen',
  reference: sweep(60, 79, 6),
  // A pace that suits a heavy jig.
  beginner: sweep(60, 79, 1)
} satisfies Challenge;
