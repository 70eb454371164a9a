import { MODEL_VERSION } from '$lib/model';
import type { HomeAnswer, PhoneView } from '$lib/wire';

/** An answer to a question of the bank that was told right or wrong. */
export interface Told {
  /** The whole question: rooms ask several in the same words of different water. */
  ask: string;
  /** The option that was chosen, in its words. */
  said: string;
  made: HomeAnswer;
}

/**
 * What this view tells of its phone's answer, once it is revealed: of the vote before any help, which
 * is the one that a record keeps.
 * @param votes options by part
 * @param now ISO time
 */
export function toldIn(
  { at, shown, revealed }: PhoneView,
  votes: Readonly<Record<string, string>>,
  now: string
): Told | null {
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
