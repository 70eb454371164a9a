const KNOWN = 'comes back when you’re about to forget it. Days off cost nothing.';

/** When what was asked comes back: what was missed is not about to be forgotten, it was not known. */
export function comesBack(right: number, missed: number): string {
  if (right + missed === 0) return 'Each comes back on its day. Days off cost nothing.';
  if (missed === 0) return `${right === 1 ? 'It' : 'Each'} ${KNOWN}`;
  if (right === 0) return missed === 1 ? 'It comes back soon.' : 'They come back soon.';
  return `What you missed comes back soon. What you got right ${KNOWN}`;
}
