export { default as ComparePage } from './ComparePage.svelte';
export { default as Retrieves } from './Retrieves.svelte';
export { default as FreePractice } from './FreePractice.svelte';
export { type Differing, FIRST_PAIRS, movesToCompare, comparedSideOf, variantsOf } from './choices';
export { isRunFragment, readRunFragment, runFragment } from './run-link';
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
  withStandardGear,
  withTry
} from './water';
