import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, lift, lowToTheSide, pause, sweep, upright } from '../../retrieves/moves';
import { deeperWith, JIGS } from '../fathomley';

export default [
  {
    id: 'first-light',
    title: 'First light',
    ask: '{48 °F|9 °C}, fish hardly moving, {20 ft|6 m} deep. Drag it {1 ft|30 cm}, slow, on bottom.',
    setup: deeperWith({
      depth_m: ft(20),
      temperature_C: 9,
      mass_kg: JIGS.half,
      start: { bait_x_m: ft(50), slack_m: 0.05 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.06, weight: 34 },
      { kind: 'pace', m_s: [0.04, 0.3], weight: 33 },
      { kind: 'contact', least: 0.9, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 71, 3),
    // The hand of yesterday’s warm afternoon.
    beginner: sweep(60, 85, 0.8)
  },
  {
    id: 'wind-comes-up',
    title: 'Wind comes up',
    ask: 'Wind puts some belly back after you reel down. Move the jig {2 ft|60 cm} with the rod alone.',
    setup: deeperWith({
      mass_kg: JIGS.threeQuarters,
      start: { bait_x_m: ft(60), slack_m: 0.2 },
      more: { wind_m_s: 6 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.12, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.4, weight: 33 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 82, 5),
    // The belly forgotten.
    beginner: sweep(60, 71, 3)
  },
  {
    id: 'they-wake',
    title: 'They wake up',
    ask: 'Back after two warm weeks, {61 °F|16 °C}: fish near bottom chase bait. Three even hops, {3 to 10 in|8 to 25 cm} high.',
    setup: deeperWith({ temperature_C: 16, start: { bait_x_m: ft(30), slack_m: 0.03 } }),
    plane: 'lift',
    start: upright(30),
    hold_s: 3,
    longest_pause_s: 5,
    goals: [
      { kind: 'hops', count: 3, height_m: [0.08, 0.25], weight: 60 },
      { kind: 'rhythm', even: true, weight: 40 }
    ],
    visibility: 'unseen',
    reference: inTurn(
      lift(30, 42, 0.25),
      pause(3),
      lift(42, 52, 0.25),
      pause(3),
      lift(52, 61, 0.25)
    ),
    // Snaps: too much of a good thing.
    beginner: inTurn(lift(30, 60, 0.25), pause(2), lift(60, 90, 0.25))
  }
] satisfies Challenge[];
