import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { inTurn, lowToTheSide, pause, reel, sweep } from '../../retrieves/moves';
import { deeperWith } from '../fathomley';

export default [
  {
    id: 'drifting-away',
    title: 'Drifting away',
    ask: 'The boat drifts away from your jig. Move it {2 ft|60 cm}, boat and rod together.',
    setup: deeperWith({ start: { bait_x_m: ft(50), slack_m: 0.05 }, more: { drift_m_s: -0.05 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.12, weight: 34 },
      { kind: 'contact', least: 0.9, weight: 33 },
      { kind: 'speed', most_m_s: 0.4, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 70, 3),
    // All of it by the rod, as from a boat that stays.
    beginner: sweep(60, 88, 3)
  },
  {
    id: 'drifting-onto',
    title: 'Drifting onto it',
    ask: 'The boat drifts onto your jig. Wait 5 seconds: it gives you slack. Reel that up, jig still. Then drag {1 ft|30 cm}, on bottom.',
    setup: deeperWith({ start: { bait_x_m: ft(50), slack_m: 0.05 }, more: { drift_m_s: 0.1 } }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 2,
    longest_pause_s: 10,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.1, weight: 34 },
      { kind: 'reeled', least_m: 0.25, given_by: 'boat', weight: 33 },
      { kind: 'contact', least: 0.9, weight: 33 }
    ],
    visibility: 'half_seen',
    reference: inTurn(sweep(60, 60, 0.1), pause(5), reel(0.42, 1.4), sweep(60, 82.4, 2.3)),
    // The rod outruns the boat, and the reel takes nothing.
    beginner: sweep(60, 90, 2)
  }
] satisfies Challenge[];
