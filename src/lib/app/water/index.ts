export { type Differing, FIRST_PAIRS, VARIANTS, movesToCompare, comparedSideOf } from './choices';
export { challengeAt, shownRetrieves } from './shown';
export {
  HOLD_S,
  type WaterTry,
  STARTS,
  type KeptWater,
  comparable,
  firstWater,
  loadWater,
  saveWater,
  withTry
} from './water';
