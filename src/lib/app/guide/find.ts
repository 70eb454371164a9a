/** Small letters without accents, so that “ines” finds “Inès”. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Whether a name has all the words that were typed, or their beginnings and middles. */
export function isNamed(name: string, typed: string): boolean {
  const within = plain(name);
  return plain(typed)
    .split(/\s+/)
    .every((word) => within.includes(word));
}

/** So many names are found faster by typing than by looking. */
export const MANY_NAMES = 8;

/** Names that more than one client has, small letters and accents apart. */
export function sharedNames(clients: readonly { nickname: string }[]): Set<string> {
  const names = clients.map(({ nickname }) => plain(nickname));
  const shared = new Set(names.filter((name, i) => names.indexOf(name) !== i));
  return new Set(clients.map(({ nickname }) => nickname).filter((name) => shared.has(plain(name))));
}
