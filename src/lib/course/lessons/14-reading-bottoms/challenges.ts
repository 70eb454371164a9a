import { ft } from '../../items/draw';
import type { Challenge } from '../../../scoring';
import { lowToTheSide, sweep } from '../../retrieves/moves';
import { deeperWith, JIGS } from '../fathomley';

const onGravel = sweep(60, 70, 4);
const onSand = sweep(60, 79, 8);
const onMud = sweep(60, 87.5, 12);

export default [
  {
    id: 'out-of-the-mud',
    title: 'Out of the mud',
    ask: 'Mud holds the jig. Bring it {1 ft|30 cm} in 4 seconds, without making it jump.',
    setup: deeperWith({
      bottom: { ground: { kind: 'mud', seed: 3 } },
      start: { bait_x_m: ft(65), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.07, weight: 26 },
      { kind: 'contact', least: 0.9, weight: 26 },
      // As fast as mud lets it go however slowly the rod pulls, and no faster.
      { kind: 'speed', most_m_s: 0.57, weight: 48 }
    ],
    visibility: 'seen',
    reference: sweep(60, 71, 4),
    // Torn out: it goes twice as far.
    beginner: sweep(60, 82, 0.6)
  },
  {
    id: 'over-gravel',
    title: 'Over gravel',
    ask: 'Drag the jig {3 ft|90 cm} over gravel, slow enough to feel it tick.',
    setup: deeperWith({
      bottom: { ground: { kind: 'gravel', seed: 5 } },
      start: { bait_x_m: ft(65), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 2,
    goals: [
      { kind: 'travel', target_m: 0.9144, band_m: 0.15, weight: 60 },
      { kind: 'contact', least: 0.7, weight: 40 }
    ],
    visibility: 'unseen',
    reference: sweep(60, 87.5, 6),
    // Too fast to feel one pebble from the next.
    beginner: sweep(60, 80, 0.7)
  },
  {
    id: 'through-grass',
    title: 'Through grass',
    ask: 'Grass builds up, then lets go. Drag the jig {2 ft|60 cm} through it.',
    setup: deeperWith({
      bottom: { ground: { kind: 'grass', seed: 4 } },
      start: { bait_x_m: ft(65), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 3,
    goals: [
      { kind: 'travel', target_m: 0.6, band_m: 0.15, weight: 30 },
      { kind: 'contact', least: 0.7, weight: 30 },
      // As fast as grass lets it go however slowly the rod pulls, and no faster.
      { kind: 'speed', most_m_s: 0.51, weight: 40 }
    ],
    visibility: 'half_seen',
    reference: sweep(60, 80, 8),
    // Stopped at the first load.
    beginner: sweep(60, 68, 2)
  },
  // A try is judged by what the hand did, so the rod answers; questions on this lesson ask for the name.
  {
    id: 'what-is-this-bottom',
    title: 'What is this bottom?',
    ask: 'Mud, sand or gravel? Drag {1 oz|28 g}, tip under {1 ft|30 cm} a second. Stop the jig at {1 ft|30 cm} for gravel, {2 ft|60 cm} for sand, {3 ft|90 cm} for mud.',
    setup: deeperWith({
      mass_kg: JIGS.ounce,
      bottom: { ground: { kind: 'gravel', seed: 5 } },
      start: { bait_x_m: ft(55), slack_m: 0.03 }
    }),
    plane: 'sweep',
    start: lowToTheSide,
    hold_s: 1,
    longest_pause_s: 6,
    // A bottom taken for another one is a foot off: nothing for the travel.
    goals: [
      { kind: 'travel', target_m: 0.3048, band_m: 0.1, weight: 60 },
      { kind: 'tip_speed', most_m_s: 0.3, weight: 40 }
    ],
    visibility: 'unseen',
    look_alikes: [
      { ground: 'gravel', travel_m: 0.3048, reference: onGravel },
      { ground: 'sand', travel_m: 0.6096, reference: onSand },
      { ground: 'mud', travel_m: 0.9144, reference: onMud }
    ],
    reference: onGravel,
    // Ripped over it: nobody feels what it is.
    beginner: sweep(60, 80, 0.6)
  }
] satisfies Challenge[];
