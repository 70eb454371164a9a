import { stonesOf } from './ground';
import { ScenarioError, type Setup } from './scenario';

/**
 * Most node-steps of one run: seconds × pieces × steps a second. A core does some three million a second,
 * so this is five seconds. A higher bound lets one scenario hold up all others.
 */
const MOST_NODE_STEPS = 15e6;
/** Steps a second where the step follows the motion: between 100 and 800 by what the bait does. */
const USUAL_STEPS_A_SECOND = 200;
/** So many stones cost as much again as the line. */
const STONES_THAT_DOUBLE = 50;
/** What is usual of each, to tell which of them is out of the way. */
const USUAL = { time_s: 60, segments: 40 };

/** Throws ScenarioError for a run that would take too long, with the field that makes it so. */
export function checkCost(setup: Setup, moves_s: number, hold_s: number): void {
  const { segments, step_s } = setup.numerics;
  const stepsASecond = step_s === undefined ? USUAL_STEPS_A_SECOND : 1 / step_s;
  const stones = 1 + stonesOf(setup).length / STONES_THAT_DOUBLE;
  const cost = (moves_s + hold_s) * segments * stepsASecond * stones;
  if (cost <= MOST_NODE_STEPS) return;
  const shares: [path: string, value: number, times: number][] = [
    ['numerics.step_s', step_s ?? 0, stepsASecond / USUAL_STEPS_A_SECOND],
    ['numerics.segments', segments, segments / USUAL.segments],
    ['move', moves_s, moves_s / USUAL.time_s],
    ['hold_s', hold_s, hold_s / USUAL.time_s],
    ['bottom', stones, stones]
  ];
  const [path, value] = shares.reduce((most, one) => (one[2] > most[2] ? one : most));
  throw new ScenarioError(
    path,
    value,
    `makes a run of ${millions(cost)} million node-steps, ${millions(MOST_NODE_STEPS)} at most`
  );
}

const millions = (count: number): string => (count / 1e6).toFixed(0);
