import * as v from 'valibot';
import { rodInputSchema } from '../model';
import type { Phase } from '../scoring';
import { shortName, time } from './fields';
import { outfitGear } from './outfit';

const PHASES = ['seen', 'half_seen', 'unseen', 'kept'] as const satisfies readonly Phase[];

/** What was said of a try before it was shown. */
export const guessEntries = {
  /** How far the learner thought the bait had gone, m towards the angler; of a hop how high. */
  guess_m: v.optional(v.pipe(v.number(), v.minValue(-100), v.maxValue(100))),
  /** Whether the learner thought the bait had lifted on its way. */
  guess_lifted: v.optional(v.boolean()),
  /** Of a fall: whether the learner thought the bait lay on the bottom when the rod moved. */
  guess_down: v.optional(v.boolean())
};
export type KeptGuess = v.InferOutput<v.StrictObjectSchema<typeof guessEntries, undefined>>;

/** Marks of 100 as the phone showed them; a server or a guide that takes them grades for itself. */
export const marks = v.pipe(v.number(), v.minValue(0), v.maxValue(100));

/** A try as it is kept: what the hand did, and what it was given for it. */
export const storedTry = v.strictObject({
  id: shortName,
  challenge: shortName,
  input: rodInputSchema,
  /** Version of the bait model under which the learner saw this try. */
  model: shortName,
  /** Marks it was given under that version; records before version 5 have none. */
  marks: v.optional(marks),
  at: time,
  ...guessEntries,
  /** The phase of practice it was made in; without it, it was made in a lesson. */
  phase: v.optional(v.picklist(PHASES)),
  /** The learner's own gear, where it was made with that instead of the challenge's. */
  gear: v.optional(outfitGear)
});
export type StoredTry = v.InferOutput<typeof storedTry>;
