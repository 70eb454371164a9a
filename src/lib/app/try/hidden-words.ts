import type { Challenge } from '$lib/scoring';

/** What is done, at the top of its screen: nobody is to call what is in sight. */
export function taskWords(ask: string, isLook: boolean): string {
  return isLook ? ask.replace(/ Call it before you look\./, '') : ask;
}

/** What tells that the jig is hidden, before the rod is taken; empty where it is seen, or the task says so. */
export function hiddenWords({
  visibility,
  title,
  ask
}: Pick<Challenge, 'visibility' | 'title' | 'ask'>): string {
  if (visibility === 'seen' || /unseen|before you look/.test(`${title} ${ask}`)) return '';
  return 'Jig hidden while you move.';
}
