import * as v from 'valibot';
import { shortName, time } from './fields';

/** How the learner came by the answer, in their own judgement. */
const REPORTS = ['knew', 'worked out', 'guessed'] as const;
export const report = v.picklist(REPORTS);
export type Report = v.InferOutput<typeof report>;

/** An answer to a question, as it is kept. */
export const storedAnswer = v.strictObject({
  id: shortName,
  /** Generator or fixed item. */
  item: shortName,
  /** 0 for a fixed item. */
  seed: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e9)),
  /** An option, things in order, or a place on the ruler in SI. */
  given: v.union([
    shortName,
    v.pipe(v.array(shortName), v.maxLength(10)),
    v.pipe(v.number(), v.finite())
  ]),
  /**
   * As the learner was told at the time, by the model named in `model`. Kept, since the review goes
   * on from what was told; item, seed and answer let anyone work it out again.
   */
  right: v.boolean(),
  report,
  model: shortName,
  at: time
});
export type StoredAnswer = v.InferOutput<typeof storedAnswer>;
