import type { Challenge } from '../../../../scoring';
import { lowToTheSide, sweep } from '../../../retrieves/moves';
import { deeperWith, JIGS } from '../../fathomley';

const onGravel = sweep(60, 70, 4);
const onSand = sweep(60, 79, 8);
const onMud = sweep(60, 87.5, 12);

export default {
  id: 'what-is-this-bottom',
  title: 'What is this bottom?',
  ask: '{1 oz|28 g}: drag slow and feel. Mud tugs once: go {3 ft|90 cm}. Sand is even: {2 ft|60 cm}. Gravel ticks: stop at {1 ft|30 cm}.',
  setup: deeperWith({
    mass_kg: JIGS.ounce,
    bottom: { ground: { kind: 'gravel', seed: 5 } },
    start: { bait_x_m: 18, slack_m: 0.03 }
  }),
  plane: 'sweep',
  start: lowToTheSide,
  hold_s: 1,
  longest_pause_s: 4,
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
} satisfies Challenge;
