import * as v from 'valibot';
import { numberIn, text } from '../scoring';
import { MEASURE_NAMES, SIGN_NAMES } from './items/measures';

/**
 * What a statement rests on. `practice`: common practice, which no run decides and no source backs.
 * `published`: a value of others that the model is tested against, with where.
 * `run`: that run shows it, whatever is unknown (see `Unknowns`). `most`: of these runs the first has
 * the most, and so on. `alike`: nobody in a boat tells these runs apart by it. In a lesson runs go by the
 * id of a demonstration, a proof or a challenge (its reference), the predicted one by "question"; in a
 * question by their names in items/claims/proofs.ts, a lesson's with the lesson before it: "speed:slow".
 */
const unknowns = v.optional(v.picklist(['slack and drag', 'drag']));
const measure = v.picklist(MEASURE_NAMES);
export const basis = v.union(
  [
    v.literal('practice'),
    v.strictObject({ published: text }),
    v.strictObject({
      run: text,
      holds: v.optional(v.record(measure, v.tuple([numberIn(-100, 100), numberIn(-100, 100)]))),
      /** What the run can be seen to have done. */
      sign: v.optional(v.picklist(SIGN_NAMES)),
      unknowns,
      /** Guides see it otherwise, or disagree: the words say both. */
      disputed: v.optional(v.literal(true))
    }),
    v.strictObject({
      most: measure,
      of: v.pipe(v.array(text), v.minLength(2, 'must name two runs')),
      /** So many times as much as the second has the first, at least and at most. */
      times: v.optional(v.tuple([numberIn(0, 100), numberIn(0, 100)])),
      unknowns,
      disputed: v.optional(v.literal(true))
    }),
    v.strictObject({
      alike: measure,
      of: v.pipe(v.array(text), v.minLength(2, 'must name two runs')),
      unknowns
    })
  ],
  'must be "practice", what is published, a run with what holds of it, or the runs that have the most'
);

/** What is stated, in the words it is stated in, whole sentences or parts of them, and what it rests on. */
export const claim = v.strictObject({
  says: v.union([text, v.pipe(v.array(text), v.minLength(1, 'must not be empty'))]),
  basis
});

export type Basis = v.InferOutput<typeof basis>;
