import { clinicSubmission, homeAnswer, report, type Report } from '$lib/wire';
import * as v from 'valibot';

/** An answer to a question of the bank that was told right or wrong. */
const revealedAnswer = v.object({
  /** The whole question: rooms ask several in the same words of different water. */
  ask: v.string(),
  /** The option that was chosen, in its words. */
  said: v.string(),
  made: homeAnswer
});
export type RevealedAnswer = v.InferOutput<typeof revealedAnswer>;

/** The place of a phone in a clinic, kept so that it has it again after a reload; less what cannot be read. */
const place = v.object({
  code: v.string(),
  token: v.string(),
  /** What was answered, by part: the option, or the last try's id. */
  votes: v.fallback(v.record(v.string(), v.string()), {}),
  /** What the server has not acknowledged yet, oldest first. */
  unsent: v.fallback(v.array(clinicSubmission), []),
  /** How its owner came by the answers to questions of the bank, by round. */
  reports: v.fallback(v.record(v.string(), report), {}),
  /** Answers to questions of the bank that were told right or wrong, by round. */
  told: v.fallback(v.record(v.string(), revealedAnswer), {})
});
export type Place = Readonly<v.InferOutput<typeof place>>;
export type Reports = Readonly<Record<string, Report>>;

const KEY = 'feltfoot-seat';

export function newPlace(code: string, token: string): Place {
  return v.parse(place, { code, token });
}

/** Where nothing more can be kept, the place lasts as long as the page. */
export function keepPlace(storage: Storage, place: Place | null): void {
  try {
    if (place) storage.setItem(KEY, JSON.stringify(place));
    else storage.removeItem(KEY);
  } catch {
    // Full, or forbidden by the browser.
  }
}

export function keptPlace(storage: Storage): Place | null {
  try {
    return v.parse(place, JSON.parse(storage.getItem(KEY) ?? ''));
  } catch {
    return null;
  }
}
