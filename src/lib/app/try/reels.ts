import type { Challenge } from '$lib/scoring';

/** Whether the move that does it turns the reel, which then belongs within reach. */
export function reels({ reference }: Challenge): boolean {
  if (reference.kind === 'rod_input') return reference.line_in_m !== undefined;
  return reference.kind === 'sequence' && reference.moves.some(({ kind }) => kind === 'reel');
}
