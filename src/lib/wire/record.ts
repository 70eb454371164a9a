import * as v from 'valibot';
import type { StoredAnswer } from './answer';
import { planAsked, type DayPlan } from './day-plan';
import { between, shortName, time } from './fields';
import type { LogEntry, SpellDraft } from './log-entry';
import type { Outfit } from './outfit';
import type { ClubSession, TestSession } from './test-session';
import type { StoredTry } from './try';

/**
 * What a learner's record holds: what the learner did, and the marks it was given. Under the version of the
 * model that gave them they are worked out anew from the rod input, so that nobody is flattered; under
 * another they stand as they were given.
 * Times are ISO 8601 in UTC and are handed in by the caller. The document is described in
 * docs/record-format.md.
 */
export const RECORD_VERSION = 6;

export const prediction = v.strictObject({
  lesson: shortName,
  /** The station of the lesson that asked. */
  station: shortName,
  /** Chosen, or nearest to the number that was said; the weight that was tied on. */
  option: shortName,
  /** The number, SI, where the lesson asks for one. */
  said: v.optional(between(-100, 1000)),
  at: time
});

/** How far the learner has gone down a lesson. */
export const lessonProgress = v.strictObject({
  lesson: shortName,
  /** Stations that were gone on to, each once; the last is where the learner was last; none: it wasn't begun. */
  reached: v.pipe(v.array(shortName), v.maxLength(100)),
  /** Tries that the learner chose to leave out; none: none. */
  skipped: v.optional(v.pipe(v.array(shortName), v.maxLength(100))),
  at: time,
  /** When the end was first reached. */
  finished: v.nullable(time)
});

/** The water that was fished or planned last: every page that asks for water begins with it. */
const waterNow = v.pick(planAsked, ['depth_m', 'ground', 'temperature_C', 'wind', 'out_m']);

export const settings = v.strictObject({
  units: v.picklist(['imperial', 'metric']),
  scheme: v.picklist(['auto', 'light', 'dark']),
  /** The outfit in hand; none: the gear that a page comes with. */
  outfit: v.optional(shortName),
  /** None: the water that a page comes with. */
  water: v.optional(waterNow)
});

/** Something that could not be read: kept as it was found, with the reason. */
export const setAside = v.strictObject({
  what: shortName,
  why: v.string(),
  at: time,
  value: v.unknown()
});

export type Prediction = v.InferOutput<typeof prediction>;
export type LessonProgress = v.InferOutput<typeof lessonProgress>;
export type WaterNow = v.InferOutput<typeof waterNow>;
export type Settings = v.InferOutput<typeof settings>;
export type SetAside = v.InferOutput<typeof setAside>;

/** Everything but tries and sessions, which are many and long and are stored one by one. */
export interface Notes {
  settings: Settings;
  predictions: readonly Prediction[];
  progress: readonly LessonProgress[];
  /** Answers to questions, in the order in which they were given. */
  answers: readonly StoredAnswer[];
  outfits: readonly Outfit[];
  plans: readonly DayPlan[];
  /** The field log. */
  entries: readonly LogEntry[];
  /** The spell that is being filled in; null for none. */
  draft: SpellDraft | null;
  setAside: readonly SetAside[];
}

export interface LearnerRecord extends Notes {
  /** In the order in which they were made. */
  tries: readonly StoredTry[];
  /** Tests of the learner's own gear. */
  sessions: readonly TestSession[];
  /** Sessions of a club, the learner's own among them where they were added. */
  club: readonly ClubSession[];
}
