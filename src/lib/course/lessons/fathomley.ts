import { ft, SMALL_TRAILER_M2 } from '../items/draw';
import type { SetupInput } from '../../model';

/** Fathomley Lake and its rod locker: invented. Everything else in the lessons starts from here. */

/** Jigs of the locker by their names in ounces, kg. */
export const JIGS = {
  quarter: 0.00709,
  threeEighths: 0.01063,
  half: 0.01417,
  fiveEighths: 0.01772,
  threeQuarters: 0.02126,
  ounce: 0.02835
} as const;

/**
 * The fastest tenth of a second of a drag in these lessons, however far it goes, m/s: 1.3 ft/s. A hand's
 * speed rises to twice its average, which leaves 2 s for a foot. Less is asked only where the task says so.
 */
export const DRAG_MOST_M_S = 0.4;

/**
 * A rod of 7 ft 9 in, held 15 in up the butt. 10 ft of water, a 5/8 oz jig with a small trailer, 12-lb
 * fluorocarbon, and the last 30 ft of a 60 ft cast, where a drag leaves the bottom soonest.
 */
export const fathomley = {
  water: { depth_m: ft(10), temperature_C: 14 },
  bottom: { friction: 0.4 },
  line: { material: 'fluorocarbon', diameter_m: 0.00028 },
  bait: { mass_kg: JIGS.fiveEighths, drag_area_m2: SMALL_TRAILER_M2 },
  rod: { length_m: 1.98, pivot_height_m: 1.1, tip_stiffness_N_per_m: 20 },
  start: { bait_x_m: ft(30), slack_m: 0.03 }
} satisfies SetupInput;

type Bottom = NonNullable<SetupInput['bottom']>;

/** Fathomley Lake with what a lesson changes of it: whole parts, or single fields of a part. */
export function waterWith(change: {
  depth_m?: number;
  temperature_C?: number;
  bottom?: Bottom;
  line?: SetupInput['line'];
  mass_kg?: number;
  drag_area_m2?: number;
  tip_stiffness_N_per_m?: number;
  start?: Partial<SetupInput['start']>;
  more?: Partial<Pick<SetupInput, 'bites' | 'wind_m_s' | 'drift_m_s'>>;
}): SetupInput {
  const { water, bait, rod, start } = fathomley;
  return {
    water: {
      depth_m: change.depth_m ?? water.depth_m,
      temperature_C: change.temperature_C ?? water.temperature_C
    },
    bottom: change.bottom ?? fathomley.bottom,
    line: change.line ?? fathomley.line,
    bait: {
      mass_kg: change.mass_kg ?? bait.mass_kg,
      drag_area_m2: change.drag_area_m2 ?? bait.drag_area_m2
    },
    rod: {
      ...rod,
      tip_stiffness_N_per_m: change.tip_stiffness_N_per_m ?? rod.tip_stiffness_N_per_m
    },
    start: { ...start, ...change.start },
    ...change.more
  };
}

/** Off the main-lake points of Fathomley Lake, where the later lessons fish. */
const DEEPER_M = ft(20);

/** Deeper water, with what a lesson changes of it. */
export const deeperWith = (change: Parameters<typeof waterWith>[0]): SetupInput =>
  waterWith({ depth_m: DEEPER_M, ...change });

export const deeper = deeperWith({});

/** A cast that has just met the water; the spool gives line until the bait touches the bottom. */
export const castOut = (
  bait_x_m: number,
  spool: 'free' | 'closed' = 'free'
): SetupInput['start'] => ({
  bait_x_m,
  line: 'splash',
  spool,
  slack_m: spool === 'free' ? 0.2 : 0.05
});

export const place = {
  name: 'Fathomley Lake',
  note: 'An invented lake, {10 ft|3 m} deep unless a task says otherwise.'
};

export const deepPlace = {
  name: place.name,
  note: 'An invented lake, {20 ft|6 m} deep unless a task says otherwise.'
};

/** One line where a drill needs it; the whole of it is said once, in the lesson on safety. */
export const drillCautions = {
  dry: 'No hook on the line. Look up and all around first.',
  water: 'Glasses on. Look behind before you cast.',
  /** Begins on land and ends on the water. */
  both: 'On land: no hook. On the water: glasses on. Look up and all around first.',
  snag: 'Glasses on. Look behind before you cast. Hung up? Nobody in line with it, face turned away. Never wrap line on a hand.'
};
