import { parseSetup, type RodInput } from '$lib/model';
import type { Side } from '$lib/sandbox';
import type { Challenge } from '$lib/scoring';

/** A try of the room beside the move that the challenge holds to be good. Nobody is named. */
export function besideReference(challenge: Challenge, input: RodInput): [Side, Side] {
  const { reference, hold_s } = challenge;
  const setup = parseSetup(challenge.setup);
  return [
    { name: 'A try of this room', when: 'in this try', setup, move: input, hold_s },
    { name: 'The reference', when: 'in the reference', setup, move: reference, hold_s }
  ];
}
