import { BIG_TRAILER_M2, ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { deeperWith, JIGS } from '../fathomley';

export default [
  {
    id: 'big-trailer-drag',
    title: 'Drag a big trailer',
    ask: 'Big trailer, {1/2 oz|14 g}. Drag it {2 ft|60 cm} and keep it on bottom.',
    setup: deeperWith({
      mass_kg: JIGS.half,
      drag_area_m2: BIG_TRAILER_M2,
      start: { bait_x_m: ft(50), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.3, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 79, 6),
    // The pace that a bare jig allows.
    beginner: sweep(60, 79, 1)
  }
] satisfies Challenge[];
