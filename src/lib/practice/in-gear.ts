import type { Challenge } from '../scoring';
import { withOutfitGear, type OutfitGear, type StoredTry } from '../wire';

/** The challenge in the learner's own gear: the same water, the same task, another rod, line and jig. */
export function inGear(challenge: Challenge, gear: OutfitGear | undefined): Challenge {
  if (!gear) return challenge;
  const { spread } = gear;
  return { ...challenge, setup: withOutfitGear(challenge.setup, gear), ...(spread && { spread }) };
}

/** The challenge that a stored try was made at, in the gear it was made with; undefined for none. */
export function challengeOfTry(
  { challenge: id, gear }: Pick<StoredTry, 'challenge' | 'gear'>,
  find: (id: string) => Challenge | undefined
): Challenge | undefined {
  const challenge = find(id);
  return challenge && inGear(challenge, gear);
}
