import type { Verdict } from '$lib/course/items';

/** The word before the reply; none where the reply begins with a yes of its own. */
export function openingOf({ right, reply }: Verdict): string {
  if (!right) return 'Not so.';
  return /^Yes\b/.test(reply) ? '' : 'Right.';
}
