export { type Differing, FIRST_PAIRS, VARIANTS, movesToCompare, sideOf } from './choices';
export { challengeAt, retrieves } from './shown';
export {
  HOLD_S,
  type KeptTry,
  STARTS,
  type Water,
  comparable,
  firstWater,
  loadWater,
  saveWater,
  withTry
} from './water';
