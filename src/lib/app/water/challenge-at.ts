import { RETRIEVES } from '$lib/course';

/** The challenge that an address names by its hash, or null. */
export function challengeAt(hash: string): string | null {
  const id = hash.replace(/^#/, '');
  return RETRIEVES.some(({ challenges }) => challenges.includes(id)) ? id : null;
}
