const KNOWN =
  'comes back on the day when you are about to forget it; days in between cost nothing.';

/** When what was asked comes back: what was missed is not about to be forgotten, it was not known. */
export function comesBack(right: number, missed: number): string {
  if (right + missed === 0) return 'Each comes back on its day; days in between cost nothing.';
  if (missed === 0) return `${right === 1 ? 'It' : 'Each'} ${KNOWN}`;
  if (right === 0) return missed === 1 ? 'It comes again soon.' : 'They come again soon.';
  return `What you missed comes again soon. What you had right ${KNOWN}`;
}
