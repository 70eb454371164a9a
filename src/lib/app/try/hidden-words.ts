import type { Challenge } from '$lib/scoring';

/** What tells that the jig is hidden, before the rod is taken; empty where it is seen, or the task says so. */
export function hiddenWords({
  visibility,
  title,
  ask
}: Pick<Challenge, 'visibility' | 'title' | 'ask'>): string {
  if (visibility === 'seen' || /unseen|before you look/.test(`${title} ${ask}`)) return '';
  return 'Jig hidden while you move.';
}
