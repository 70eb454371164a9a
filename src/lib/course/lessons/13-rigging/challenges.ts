import { BIG_TRAILER_M2, ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, lowToTheSide, pause, sweep, upright } from '../../retrieves/moves';
import { castOut, deeperWith, JIGS, waterWith } from '../fathomley';

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
  },
  {
    id: 'big-trailer-count',
    title: 'Count a big trailer',
    ask: 'Free spool, {20 ft|6 m}, {1/2 oz|14 g} with a big trailer, unseen. Lower the rod once it’s down.',
    setup: waterWith({
      depth_m: ft(20),
      mass_kg: JIGS.half,
      drag_area_m2: BIG_TRAILER_M2,
      start: castOut(ft(45))
    }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 40,
    goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
    visibility: 'unseen',
    reference: inTurn(held(45), pause(16), lift(45, 20, 1)),
    // The count of a bare jig.
    beginner: inTurn(held(45), pause(8), lift(45, 20, 1))
  }
] satisfies Challenge[];
