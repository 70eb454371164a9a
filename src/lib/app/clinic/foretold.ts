import type { PhoneView, Prediction } from '$lib/wire';

/**
 * What this phone foretold, once it cannot be changed any more: its vote before any help, when the
 * round is held, voted on again, left or over.
 * @param votes options by part
 */
export function foretold(
  before: PhoneView | null,
  next: PhoneView,
  votes: Readonly<Record<string, string>>
): Omit<Prediction, 'at'>[] {
  const isLeft = before !== null && (before.at !== next.at || next.isOver);
  const isFixed = next.ballot > 1 || next.phase !== 'open';
  const settled = [...(isLeft ? [before] : []), ...(isFixed ? [next] : [])];
  return settled.flatMap(({ shown, at }) => {
    const option = votes[`${at}.1`];
    if (shown.kind !== 'predict' || !shown.asks || option === undefined) return [];
    return [{ ...shown.asks, option }];
  });
}
