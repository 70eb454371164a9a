import { FOOT_M, parseSetup, tipOf, type SetupInput } from '../../model';
import { waterWith } from '../lessons/fathomley';
import { lowToTheSide, sweep } from '../retrieves/moves';
import type { Condition, Drill } from './drill';

/** Three distances, two paces, two depths. */
const DISTANCES_M = [FOOT_M, 2 * FOOT_M, 3 * FOOT_M];
const PACES = [
  { about_m_s: 0.12, within_m_s: [0.05, 0.27] },
  { about_m_s: 0.27, within_m_s: [0.1, 0.55] }
] as const;
const DEPTHS_M = [3.35, 6];
/** Neither the distance nor the depth was ever practised. */
const FRESH = { distance_m: 1.5 * FOOT_M, pace: PACES[0], depth_m: 4.6 };

const CAST_M = 14;
const SLACK_M = 0.03;
/** Give or take, as a share of the target: the band outside which feedback helps (Cruz 2018). */
const BAND_PART = 0.15;
/** What stretch and flex take besides the slack, m; the content check runs the model on every reference. */
const TAKEN_BESIDE_M = 0.005;
const WIDEST_DEG = 150;

interface Drag {
  distance_m: number;
  pace: (typeof PACES)[number];
  depth_m: number;
}

function dragOf({ distance_m, pace, depth_m }: Drag): Condition {
  return () => {
    const setup = waterWith({ depth_m, start: { bait_x_m: CAST_M, slack_m: SLACK_M } });
    const reach = (part: number) =>
      azimuthTaking(setup, part * distance_m + SLACK_M + TAKEN_BESIDE_M);
    const time_s = distance_m / pace.about_m_s;
    return {
      title: 'A drag',
      ask: `Drag the jig {length:${distance_m}} at about {speed:${pace.about_m_s}}, on the bottom. The water is {depth:${depth_m}} deep.`,
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
  practised: DEPTHS_M.flatMap((depth_m) =>
    PACES.flatMap((pace) => DISTANCES_M.map((distance_m) => dragOf({ distance_m, pace, depth_m })))
  ),
  fresh: [dragOf(FRESH)]
};
