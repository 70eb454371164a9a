import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { held, inTurn, lift, lowToTheSide, pause, sweep, upright } from '../../retrieves/moves';
import { castOut, DRAG_MOST_M_S, JIGS, waterWith } from '../fathomley';

export default [
  {
    id: 'thirty-feet-down',
    title: 'Thirty feet down',
    ask: 'Count {3/4 oz|21 g} down to {30 ft|9 m}. Lower the rod when you think it’s there.',
    setup: waterWith({ depth_m: ft(30), mass_kg: JIGS.threeQuarters, start: castOut(ft(50)) }),
    plane: 'lift',
    start: upright(45),
    hold_s: 2,
    longest_pause_s: 60,
    goals: [{ kind: 'bottom_first', within_s: 4, weight: 100 }],
    visibility: 'unseen',
    reference: inTurn(held(45), pause(14.9), lift(45, 20, 1)),
    // The count of shallow water.
    beginner: inTurn(held(45), pause(8), lift(45, 20, 1))
  },
  {
    id: 'light-and-slow',
    title: 'Light and slow',
    ask: 'In {10 ft|3 m}, drag {1/4 oz|7 g} {2 ft|60 cm} slowly: about 6 seconds. Keep it on bottom.',
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
  },
  {
    id: 'heavy-in-deep-water',
    title: 'Heavy and deep',
    ask: 'Drag {1 oz|28 g} {2 ft|60 cm} in {30 ft|9 m} of water.',
    setup: waterWith({
      depth_m: ft(30),
      mass_kg: JIGS.ounce,
      start: { bait_x_m: ft(60), slack_m: 0.05 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.1, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: DRAG_MOST_M_S, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 80, 4),
    // Too short by half: the line’s bow takes the rest.
    beginner: sweep(60, 70, 2)
  }
] satisfies Challenge[];
