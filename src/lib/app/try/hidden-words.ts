import type { Challenge } from '$lib/scoring';

/** What tells that the jig is hidden, before the rod is taken; empty where it is seen. No task says so itself. */
export function hiddenWords({
  visibility,
  setup
}: Pick<Challenge, 'visibility' | 'setup'>): string {
  if (visibility === 'seen') return '';
  return setup.start.spool === 'free'
    ? 'Jig hidden on the way down.'
    : 'Jig hidden while you move.';
}
