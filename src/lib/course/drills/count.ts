import { ft } from '../items/draw';
import { baitOf, fallSpeed, parseSetup, waterAt, waterDensity, type SetupInput } from '../../model';
import { castOut, JIGS, waterWith } from '../lessons/fathomley';
import { held, inTurn, lift, pause, upright } from '../retrieves/moves';
import type { Condition, Drill } from './drill';

interface Count {
  mass_kg: number;
  /** As it is said in either units; `depth`, too. */
  weight: string;
  depth_m: number;
  depth: string;
}

/** Three weights, two depths, each as it is said in either units. */
const WEIGHTS = [
  { mass_kg: JIGS.threeEighths, weight: '{3/8 oz|11 g}' },
  { mass_kg: JIGS.half, weight: '{1/2 oz|14 g}' },
  { mass_kg: JIGS.threeQuarters, weight: '{3/4 oz|21 g}' }
];
const DEPTHS = [
  { depth_m: ft(10), depth: '{10 ft|3 m}' },
  { depth_m: ft(20), depth: '{20 ft|6 m}' }
];
const FRESH: Count = {
  mass_kg: JIGS.fiveEighths,
  weight: '{5/8 oz|18 g}',
  depth_m: ft(15),
  depth: '{15 ft|4.5 m}'
};

const HIGH_DEG = 45;
const LOW_DEG = 20;
const CAST_M = ft(45);
/** The longest fall of them all is over by then, s. */
const LONGEST_FALL_S = 25;
/** The rod may wait so long after the touch, s; the reference waits half of it. */
const WITHIN_S = 4;

function countOf({ mass_kg, weight, depth_m, depth }: Count): Condition {
  return () => {
    const setup = waterWith({ depth_m, mass_kg, start: castOut(CAST_M) });
    const fall_s = fallTime(setup);
    const after = (wait_s: number) =>
      inTurn(held(HIGH_DEG), pause(wait_s), lift(HIGH_DEG, LOW_DEG, 1));
    return {
      title: 'A count',
      ask: `${depth} of water, ${weight}, free spool. Count, and lower the rod when you think it’s down.`,
      setup,
      plane: 'lift',
      start: upright(HIGH_DEG),
      hold_s: 1,
      longest_pause_s: LONGEST_FALL_S,
      goals: [{ kind: 'bottom_first', within_s: WITHIN_S, weight: 100 }],
      reference: after(fall_s + WITHIN_S / 2),
      // Half the count: not waiting for bottom.
      beginner: after(fall_s / 2)
    };
  };
}

/**
 * From splash to bottom at the speed of a bait that falls by itself, s. That its line holds it back is
 * within what the rod may wait; a run of the model for it would come with every page that names a drill.
 */
function fallTime(input: SetupInput): number {
  const setup = parseSetup(input);
  const { depth_m, temperature_C } = setup.water;
  const { weightInWater_N } = baitOf(setup, waterAt(temperature_C));
  return depth_m / fallSpeed(weightInWater_N, setup.bait.drag_area_m2, waterDensity(temperature_C));
}

export const count: Drill = {
  id: 'count',
  title: 'Count it down',
  lesson: 'from-the-boat',
  asks: 'down',
  practised: DEPTHS.flatMap((depth) => WEIGHTS.map((weight) => countOf({ ...weight, ...depth }))),
  fresh: [countOf(FRESH)]
};
