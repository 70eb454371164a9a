import {
  type ClinicSubmission,
  clinicSubmission,
  homeAnswer,
  report,
  type Report
} from '$lib/wire';
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

const byPart = v.fallback(v.record(v.string(), v.string()), {});

/** The place of a phone in a clinic, kept so that it has it again after a reload; less what cannot be read. */
const place = v.object({
  code: v.string(),
  token: v.string(),
  /** What the clinic is called; may be empty. */
  name: v.fallback(v.string(), ''),
  /** What was answered and not refused, by part: the option, or the last try's id. */
  votes: byPart,
  /** The same as far as the server has acknowledged it. */
  taken: byPart,
  /** Why the last answer to a part does not count, in words. */
  refused: byPart,
  /** What the server has not acknowledged yet, oldest first. */
  unsent: v.fallback(v.array(clinicSubmission), []),
  /** How its owner came by the answers to questions of the bank, by round. */
  reports: v.fallback(v.record(v.string(), report), {}),
  /** Answers to questions of the bank that were told right or wrong, by round. */
  told: v.fallback(v.record(v.string(), revealedAnswer), {})
});
export type Place = Readonly<v.InferOutput<typeof place>>;
export type Reports = Readonly<Record<string, Report>>;

export function newPlace(code: string, token: string): Place {
  return v.parse(place, { code, token });
}

const notedOf = (answer: ClinicSubmission) => (answer.kind === 'vote' ? answer.option : answer.id);

function without<T>(all: Readonly<Record<string, T>>, part: string): Record<string, T> {
  return Object.fromEntries(Object.entries(all).filter(([name]) => name !== part));
}

const less = ({ unsent }: Place, { id }: ClinicSubmission) => unsent.filter((one) => one.id !== id);

/** The place with an answer that is yet to be sent. */
export function withAnswer(place: Place, answer: ClinicSubmission): Place {
  const { part } = answer;
  return {
    ...place,
    votes: { ...place.votes, [part]: notedOf(answer) },
    refused: without(place.refused, part),
    unsent: [...place.unsent, answer]
  };
}

/** The place once the server has the answer. */
export function withTaken(place: Place, answer: ClinicSubmission): Place {
  const taken = { ...place.taken, [answer.part]: notedOf(answer) };
  return { ...place, taken, unsent: less(place, answer) };
}

/** The place once the answer was refused: what was taken before it stands again. */
export function withRefused(place: Place, answer: ClinicSubmission, why: string): Place {
  const { part } = answer;
  const before = place.taken[part];
  const isLast = place.votes[part] === notedOf(answer);
  const others = without(place.votes, part);
  const votes = before === undefined ? others : { ...others, [part]: before };
  return {
    ...place,
    votes: isLast ? votes : place.votes,
    refused: { ...place.refused, [part]: why },
    unsent: less(place, answer)
  };
}

const KEY = 'feltfoot-places';
/** Clinics of one phone that are kept: nobody sits in more at a time. */
const MOST_PLACES = 4;

/** Where nothing more can be kept, the place lasts as long as the page. */
function keepAll(storage: Storage, places: readonly Place[]): void {
  try {
    storage.setItem(KEY, JSON.stringify(places.slice(0, MOST_PLACES)));
  } catch {
    // Full, or forbidden by the browser.
  }
}

/** Those of this phone, the last one first. */
export function keptPlaces(storage: Pick<Storage, 'getItem'>): Place[] {
  try {
    const all = v.parse(v.array(v.unknown()), JSON.parse(storage.getItem(KEY) ?? '[]'));
    return all.flatMap((one) => {
      const read = v.safeParse(place, one);
      return read.success ? [read.output] : [];
    });
  } catch {
    return [];
  }
}

/** Keeps this place, beside those in other clinics. */
export function keepPlace(storage: Storage, place: Place): void {
  const all = keptPlaces(storage);
  const isKnown = all.some(({ token }) => token === place.token);
  if (!isKnown) keepAll(storage, [place, ...all]);
  else
    keepAll(
      storage,
      all.map((one) => (one.token === place.token ? place : one))
    );
}

/** Keeps it as the one that was opened last. */
export function keepFirst(storage: Storage, place: Place): void {
  keepAll(storage, [place, ...others(storage, place)]);
}

export function dropPlace(storage: Storage, place: Place): void {
  keepAll(storage, others(storage, place));
}

function others(storage: Storage, place: Place): Place[] {
  return keptPlaces(storage).filter(({ token }) => token !== place.token);
}
