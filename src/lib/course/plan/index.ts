/** What the trade says of a day, as tables; what the model says of it is worked out in compute/. */
export { castsIn, CASTS_A_CHANGE, ownCount } from './casts';
export type { PlannedDay } from './day';
export { HOP_SAYS, PLAIN_MOVES, shownHop } from './moves';
export { PLAN_RULES, rulesFor, type PlanRule, type RulePart } from './rules';
export {
  firstWeight,
  lightestThatHolds,
  LONGEST_COUNT_S,
  weightUse,
  type WeightFigures,
  type WeightUse
} from './weights';
