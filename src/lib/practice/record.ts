import * as v from 'valibot';
import type { StoredAnswer } from './answer';
import { PHASES } from './design';
import { guessEntries, nameSchema, timeSchema } from './fields';

/**
 * What a learner's record holds. It keeps what the learner did, never how it was marked: marks come
 * from grading the rod input again, so a record cannot disagree with the model or be flattered.
 * Times are ISO 8601 in UTC and are handed in by the caller. The document is described in
 * docs/record-format.md.
 */
export const RECORD_VERSION = 2;

/** Half an hour at 100 samples a second: longer than any try, shorter than a mistake. */
const MAX_SAMPLES = 180_000;
const angle_deg = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));
const angles_deg = v.union([
  angle_deg,
  v.pipe(v.array(angle_deg), v.minLength(2), v.maxLength(MAX_SAMPLES))
]);

/** The hand's move as it was recorded; a single number is an angle that was held. */
const rodInput = v.strictObject({
  kind: v.literal('rod_input'),
  rate_Hz: v.literal(100),
  elevation_deg: angles_deg,
  azimuth_deg: angles_deg,
  /** Line taken in by the reel since the start, m. */
  line_in_m: v.optional(
    v.pipe(
      v.array(v.pipe(v.number(), v.minValue(-60), v.maxValue(60))),
      v.minLength(2),
      v.maxLength(MAX_SAMPLES)
    )
  )
});

export const trySchema = v.strictObject({
  id: nameSchema,
  challenge: nameSchema,
  input: rodInput,
  /** Version of the bait model under which the learner saw this try. */
  model: nameSchema,
  at: timeSchema,
  ...guessEntries,
  /** The phase of practice it was made in; without it, it was made in a lesson. See schedule.ts. */
  phase: v.optional(v.picklist(PHASES))
});

export const predictionSchema = v.strictObject({
  lesson: nameSchema,
  /** The station of the lesson that asked. */
  station: nameSchema,
  option: nameSchema,
  at: timeSchema
});

/** How far the learner has gone down a lesson. */
export const progressSchema = v.strictObject({
  lesson: nameSchema,
  /** Stations that were gone on to, each once; the last is where the learner was last. */
  reached: v.pipe(v.array(nameSchema), v.minLength(1), v.maxLength(100)),
  at: timeSchema,
  /** When the end was first reached. */
  finished: v.nullable(timeSchema)
});

export const settingsSchema = v.strictObject({
  units: v.picklist(['imperial', 'metric']),
  scheme: v.picklist(['auto', 'light', 'dark'])
});

/** Something that could not be read: kept as it was found, with the reason. */
export const setAsideSchema = v.strictObject({
  what: nameSchema,
  why: v.string(),
  at: timeSchema,
  value: v.unknown()
});

export type StoredTry = v.InferOutput<typeof trySchema>;
export type Prediction = v.InferOutput<typeof predictionSchema>;
export type LessonProgress = v.InferOutput<typeof progressSchema>;
export type Settings = v.InferOutput<typeof settingsSchema>;
export type SetAside = v.InferOutput<typeof setAsideSchema>;

/** Everything but the tries, which are many and long and are stored one by one. */
export interface Notes {
  settings: Settings;
  predictions: readonly Prediction[];
  progress: readonly LessonProgress[];
  /** Answers to questions, in the order in which they were given. */
  answers: readonly StoredAnswer[];
  setAside: readonly SetAside[];
}

export interface LearnerRecord extends Notes {
  /** In the order in which they were made. */
  tries: readonly StoredTry[];
}

export const firstSettings: Settings = { units: 'imperial', scheme: 'auto' };

export function emptyRecord(): LearnerRecord {
  return {
    settings: firstSettings,
    predictions: [],
    progress: [],
    answers: [],
    setAside: [],
    tries: []
  };
}
