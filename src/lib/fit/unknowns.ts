import { raisedMove } from '../model';
import type { UnknownName } from '../scoring';
import { DRAG_AREA_LOG_SD, dragAreaOf, type DragArea } from './timed-drop';
import type { PoolTest, Session } from './session';

/**
 * What no one can read off the gear, and what is thought of it before any test. A value is fitted as a
 * number of prior deviations from the middle (`scaled`), on a logarithmic scale where it is a factor.
 */
export interface Unknown {
  readonly name: UnknownName;
  /** The value, in the unit of its name, that many prior deviations from the middle. */
  readonly at: (scaled: number) => number;
  /** The reverse of `at`. */
  readonly scaledOf: (value: number) => number;
  /** Least and greatest, scaled. */
  readonly bounds: readonly [number, number];
  /** Whether it was told before any test of a move: a drag area by a timed drop. */
  readonly isTold: boolean;
}

/** Angles and reach of a hand that says "nine o'clock" and a rod held somewhere along its grip. */
const REACH_SD_PART = 0.12;
const ELEVATION_SD_DEG = 10;
/** Slack that nobody looked at, m. */
const SLACK_SD_M = 0.15;
/** Planing: 0 to 0.4 is what skirted jigs may have. */
const LIFT_MIDDLE = 0.2;
const LIFT_SD = 0.15;

const LEAST_DRAG_AREA_M2 = 1e-5;
const MOST_DRAG_AREA_M2 = 0.05;

const DEFAULT_REACH_M = 1.9;
const DEFAULT_DRAG_AREA_M2 = 6e-4;
const DEFAULT_SLACK_M = 0.15;

/** The unknowns of a session, less what is known and what its starts leave no room for. */
export function unknownsOf({ gear, known, tests, drops }: Session): Unknown[] {
  const reach_m = gear.rod?.length_m ?? DEFAULT_REACH_M;
  const drag_area_m2 = gear.bait.drag_area_m2 ?? DEFAULT_DRAG_AREA_M2;
  const all = [
    linear('reach_m', reach_m, REACH_SD_PART * reach_m, [0.1, 6]),
    linear('elevation_deg', 0, ELEVATION_SD_DEG, [-45, 45]),
    linear('slack_m', gear.start.slack_m ?? DEFAULT_SLACK_M, SLACK_SD_M, [0, 2]),
    drops.length > 0
      ? droppedDragArea(dragAreaOf(gear, drops))
      : dragArea(drag_area_m2, DRAG_AREA_LOG_SD),
    linear('lift_to_drag', LIFT_MIDDLE, LIFT_SD, [0, 1])
  ];
  const isSlackFree = tests.some((one) => hasSlack(one) && !one.hasOwnSlack);
  return all.filter(({ name }) => known[name] === undefined && (name !== 'slack_m' || isSlackFree));
}

export type Values = Partial<Record<UnknownName, number>>;

/** The scenario of a test with these values in it. */
export function testScenarioOf(test: PoolTest, values: Values): object {
  const { setup, move, hold_s } = test;
  const { reach_m, slack_m, drag_area_m2, lift_to_drag, elevation_deg = 0 } = values;
  const isSlackSet = slack_m !== undefined && hasSlack(test) && !test.hasOwnSlack;
  return {
    ...setup,
    rod: { ...setup.rod, ...(reach_m !== undefined && { length_m: reach_m }) },
    bait: {
      ...setup.bait,
      ...(drag_area_m2 !== undefined && { drag_area_m2 }),
      ...(lift_to_drag !== undefined && { lift_to_drag })
    },
    start: { ...setup.start, ...(isSlackSet && { slack_m }) },
    move: raisedMove(move, elevation_deg),
    ...(hold_s !== undefined && { hold_s })
  };
}

/** Whether a line with slack is what the test starts from. */
function hasSlack({ setup: { start } }: PoolTest): boolean {
  return start.line !== 'straight' && start.horizontal_tension_N === undefined;
}

function linear(
  name: UnknownName,
  middle: number,
  sd: number,
  [least, most]: readonly [number, number]
): Unknown {
  const scaledOf = (value: number) => (value - middle) / sd;
  return {
    name,
    at: (scaled) => middle + sd * scaled,
    scaledOf,
    bounds: [scaledOf(least), scaledOf(most)],
    isTold: false
  };
}

/** Posterior over prior width above which something does not tell an unknown. */
export const TOLD_BELOW = 0.8;

/** Half width of a 90 % interval of a normal distribution, in deviations. */
export const Z90 = 1.6449;

/** What a drop leaves open of it, as the tests find it. */
function droppedDragArea({ estimate, interval90: [least, most] }: DragArea): Unknown {
  const logSd = Math.log(most / least) / (2 * Z90);
  return { ...dragArea(estimate, logSd), isTold: logSd < TOLD_BELOW * DRAG_AREA_LOG_SD };
}

/** On a logarithmic scale: it is known as a factor. */
function dragArea(middle: number, logSd: number): Unknown {
  const scaledOf = (value: number) => Math.log(value / middle) / logSd;
  return {
    name: 'drag_area_m2',
    at: (scaled) => middle * Math.exp(logSd * scaled),
    scaledOf,
    bounds: [scaledOf(LEAST_DRAG_AREA_M2), scaledOf(MOST_DRAG_AREA_M2)],
    isTold: false
  };
}
