import { travelOf } from '$lib/practice';
import type { Target } from '$lib/sandbox';
import type { Challenge } from '$lib/scoring';

/** What is marked on the bottom: how far the bait is to go, and how near is near enough. */
export function targetOf(challenge: Challenge): Target | null {
  const travel = travelOf(challenge);
  return travel ? { travel_m: travel.target_m, band_m: travel.band_m } : null;
}

/** Whether the move that does it turns the reel, which then belongs within reach. */
export function reels({ reference }: Challenge): boolean {
  if (reference.kind === 'rod_input') return reference.line_in_m !== undefined;
  return reference.kind === 'sequence' && reference.moves.some(({ kind }) => kind === 'reel');
}
