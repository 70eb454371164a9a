import type { StoredTry } from '$lib/wire';
import type { Reports } from './home/home-link';
import type { Told } from './told';

type Vote = { kind: 'vote'; id: string; part: string; option: string };
type TryMade = {
  kind: 'try';
  id: string;
  part: string;
  input: StoredTry['input'];
  model: string;
  marks: number;
};
/** What a seat sends. */
export type Answer = Vote | TryMade;

/** The place of a phone in a clinic, kept so that it has it again after a reload. */
export interface Place {
  code: string;
  token: string;
  /** What was answered, by part: the option, or the last try's id. */
  votes: Readonly<Record<string, string>>;
  /** What the server has not acknowledged yet, oldest first. */
  unsent: readonly Answer[];
  /** How its owner came by the answers to questions of the bank, by round. */
  reports: Reports;
  /** Answers to questions of the bank that were told right or wrong, by round. */
  told: Readonly<Record<string, Told>>;
}

const KEY = 'feltfoot-seat';

export function newPlace(code: string, token: string): Place {
  return { code, token, votes: {}, unsent: [], reports: {}, told: {} };
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
    const { code, token, ...rest } = JSON.parse(storage.getItem(KEY) ?? '');
    return { ...newPlace(String(code), String(token)), ...rest };
  } catch {
    return null;
  }
}
