import { outfitGearOf } from '$lib/fit';
import { parseSetup, type Setup } from '$lib/model';
import { withOutfitGear, type Outfit, type OutfitGear } from '$lib/wire';

/** The gear of the outfit of this id; undefined where it is none of the record's. */
export function gearNamed(
  id: string | undefined,
  outfits: readonly Outfit[]
): OutfitGear | undefined {
  const outfit = outfits.find((one) => one.id === id);
  return outfit && outfitGearOf(outfit);
}

/** The same water with this gear, defaults filled in. Throws ScenarioError where the line cannot reach. */
export function setupWith(setup: Setup, gear: OutfitGear): Setup {
  return parseSetup(withOutfitGear(setup, gear));
}

/** The outfit whose gear a setup holds, or undefined. */
export function outfitIn(setup: Setup, outfits: readonly Outfit[]): Outfit | undefined {
  const tackle = ({ bait, line, rod }: Setup) => JSON.stringify([bait, line, rod]);
  return outfits.find((one) => {
    const inIt = { ...setup, ...withOutfitGear(setup, outfitGearOf(one)) };
    return tackle(parseSetup(inIt)) === tackle(parseSetup(setup));
  });
}
