import { MODEL_VERSION } from '$lib/model';
import type { PhoneView } from '$lib/wire';
import type { RevealedAnswer } from './place';

/**
 * What this view tells of its phone's answer, once it is revealed: of the vote before any help, which
 * is the one that a record keeps.
 * @param votes options by part
 * @param now ISO time
 */
export function revealedIn(
  { at, shown, revealed }: PhoneView,
  votes: Readonly<Record<string, string>>,
  now: string
): RevealedAnswer | null {
  const given = votes[`${at}.1`];
  if (!revealed || shown.kind !== 'ask' || !shown.item || given === undefined) return null;
  const { source: item, seed } = shown.item;
  const right = given === revealed.key;
  return {
    ask: `${shown.about} ${shown.ask}`.trim(),
    said: shown.options.find(({ id }) => id === given)?.says ?? '',
    made: { round: at, item, seed, given, right, model: MODEL_VERSION, at: now }
  };
}
