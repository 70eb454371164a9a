import { ft } from '../items/draw';
import { FOOT_M, parseSetup, tipOf, type SetupInput } from '../../model';
import { DRAG_MOST_M_S, waterWith } from '../lessons/fathomley';
import { lowToTheSide, sweep } from '../retrieves/moves';
import type { Condition, Drill } from './drill';

/**
 * Three distances, two paces, two depths. The quick one may be as fast as the lessons let a drag be; the slow
 * one takes about twice its time, so that a count tells them apart. Each is asked in the time that a button
 * takes for it: who holds one so long has moved the tip as far.
 */
const DISTANCES = [
  { distance_m: FOOT_M, distance: '{1 ft|30 cm}' },
  { distance_m: 2 * FOOT_M, distance: '{2 ft|60 cm}' },
  { distance_m: 3 * FOOT_M, distance: '{3 ft|90 cm}' }
];
const PACES = [
  { about_m_s: 0.08, within_m_s: [0.03, 0.18] },
  { about_m_s: 0.15, within_m_s: [0.07, DRAG_MOST_M_S] }
] as const;
const DEPTHS = [
  { depth_m: ft(10), depth: '{10 ft|3 m}' },
  { depth_m: ft(20), depth: '{20 ft|6 m}' }
];
/** Neither the distance nor the depth was ever practised. */
const FRESH: Drag = {
  distance_m: 1.5 * FOOT_M,
  distance: '{1 ft 6 in|45 cm}',
  pace: PACES[0],
  depth_m: ft(15),
  depth: '{15 ft|4.5 m}'
};

const CAST_M = ft(45);
const SLACK_M = 0.03;
/** Give or take, as a share of the target: the band outside which feedback helps (Cruz 2018). */
const BAND_PART = 0.15;
/** What stretch and flex take besides the slack, m; the content check runs the model on every reference. */
const TAKEN_BESIDE_M = 0.005;
const WIDEST_DEG = 150;

interface Drag {
  distance_m: number;
  /** As it is said in either units; `depth`, too. */
  distance: string;
  pace: (typeof PACES)[number];
  depth_m: number;
  depth: string;
}

/** As a hand counts it: whole seconds, of which no drag here has but one. */
const counted = (time_s: number): string => `${time_s} seconds`;

function dragOf({ distance_m, distance, pace, depth_m, depth }: Drag): Condition {
  return () => {
    const setup = waterWith({ depth_m, start: { bait_x_m: CAST_M, slack_m: SLACK_M } });
    const reach = (part: number) =>
      azimuthTaking(setup, part * distance_m + SLACK_M + TAKEN_BESIDE_M);
    const time_s = Math.round(distance_m / pace.about_m_s);
    return {
      title: 'A drag',
      ask: `${depth} of water. Drag the jig ${distance} in about ${counted(time_s)}. Keep it on bottom.`,
      setup,
      plane: 'sweep',
      start: lowToTheSide,
      hold_s: 3,
      goals: [
        { kind: 'travel', target_m: distance_m, band_m: BAND_PART * distance_m, weight: 34 },
        { kind: 'pace', m_s: [...pace.within_m_s], weight: 33 },
        { kind: 'contact', least: 0.9, weight: 33 }
      ],
      reference: sweep(lowToTheSide.azimuth_deg, reach(1), time_s),
      // Two for one, in less time than the one would take: what most hands do.
      beginner: sweep(lowToTheSide.azimuth_deg, reach(1.8), time_s / 4)
    };
  };
}

/** How far round a low rod must be turned to take up so much line. */
function azimuthTaking(input: SetupInput, taken_m: number): number {
  const setup = parseSetup(input);
  const tip = { x: 0, z: 0 };
  const xAt = (azimuth_deg: number) => {
    tipOf(setup, 0, azimuth_deg, tip);
    return tip.x;
  };
  const from = xAt(lowToTheSide.azimuth_deg);
  let [low, high] = [lowToTheSide.azimuth_deg, WIDEST_DEG];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (from - xAt(middle) < taken_m) low = middle;
    else high = middle;
  }
  return high;
}

export const dragDrill: Drill = {
  id: 'drag',
  title: 'Drag it as far as you mean',
  lesson: 'your-hands-ruler',
  asks: 'travel',
  practised: DEPTHS.flatMap((depth) =>
    PACES.flatMap((pace) => DISTANCES.map((distance) => dragOf({ ...distance, pace, ...depth })))
  ),
  fresh: [dragOf(FRESH)]
};
