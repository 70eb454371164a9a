import { asksFeel, type Challenge } from '$lib/scoring';

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

/** What offers feel, before the rod is taken, where a task is done by it; else empty. It is off until it is chosen. */
export function feelOffer(challenge: Challenge): string {
  if (!asksFeel(challenge)) return '';
  return 'Read on the picture what comes up the line, or turn Feel on and hear it.';
}
