import { TOKEN_PATTERN } from '$lib/wire';

/** What a guide keeps: the one way back into the space. */
const FORMAT = 'feltfoot guide key';

export function keyFile(name: string, link: string): string {
  const why = 'Anyone who has this file or link can open the space. Keep it where you keep keys.';
  return `${FORMAT}\nspace: ${name}\nlink: ${link}\n${why}\n`;
}

/** The secret in a key file or a link that was pasted; null when there is none. */
export function secretIn(text: string): string | null {
  // A secret may end in a hyphen, so the end of a word is not the end of it.
  const link = /#([A-Za-z0-9_-]{22,64})(?![A-Za-z0-9_-])/.exec(text)?.[1];
  if (link) return link;
  const bare = text.trim();
  return TOKEN_PATTERN.test(bare) ? bare : null;
}
