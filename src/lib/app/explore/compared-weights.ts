import { WEIGHTS_KG } from '$lib/sandbox/gear';

/** A weight that one would change to: so much lighter, or heavier, than the own one (3/8 and 3/4 oz for 1/2). */
const CHANGE = { lighter: 0.8, heavier: 1.25 };

/** The own weight between those that one would change to. */
export function comparedWeights(own_kg: number): number[] {
  const lighter = WEIGHTS_KG.findLast((kg) => kg <= own_kg * CHANGE.lighter);
  const heavier = WEIGHTS_KG.find((kg) => kg > own_kg * CHANGE.heavier);
  return [lighter, own_kg, heavier].filter((kg) => kg !== undefined);
}
