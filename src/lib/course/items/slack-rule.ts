import { FOOT_M, INCH_M } from '../../model';
import type { ShownRun } from '../lesson';
import { figuresOf } from './figures';
import { saidFeet, saidInches, saidMeasured, saidToTheInch } from './said';
import { shownScenarioOf } from './measure';

/**
 * The jig comes as far as the tip goes, minus the slack: so the lessons have it. The line's belly keeps
 * some of a lot of slack, and on steep line the sweep takes up less, so a question on it is only asked
 * where the model is within this of the sum, m.
 */
const WITHIN_M = 2 * INCH_M;

/** The rule as every question on slack says it. */
export const SLACK_RULE = 'Tip minus slack, give or take a few inches.';

/** The rule, worked out, and what the model makes of it, m. */
export function slackSum(feet: number, inches: number, travel_m: number): string {
  return `${SLACK_RULE} Here: ${leftOfTip(feet, inches)}. In the model: ${saidMeasured(travel_m)}.`;
}

/** What slack leaves of the tip's move. */
export function leftOfTip(feet: number, inches: number): string {
  const left_m = feet * FOOT_M - inches * INCH_M;
  const left = left_m < INCH_M ? 'nothing' : `about ${saidToTheInch(left_m)}`;
  return `${saidFeet(feet)} of tip, minus ${saidInches(inches)} of slack, leaves ${left}`;
}

/** How far the jig comes by that rule and by the model, m; null where the one does not bear the other out. */
export function bySlackRule(run: ShownRun, tip_m: number, slack_m: number) {
  const sum_m = tip_m - slack_m;
  const { travel_m } = figuresOf(shownScenarioOf(run));
  return Math.abs(travel_m - sum_m) <= WITHIN_M ? { sum_m, travel_m } : null;
}
