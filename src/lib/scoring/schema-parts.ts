import * as v from 'valibot';
import { numberIn } from '../model';
import { wordingFault } from './wording';

export { numberIn };

export function whole(low: number, high: number) {
  return v.pipe(numberIn(low, high), v.integer('must be a whole number'));
}

/** Words for a learner; quantities stand in braces (see inUnits). */
export const text = v.pipe(
  v.string(),
  v.regex(/\S/, 'must not be empty'),
  v.check(
    (words) => wordingFault(words) === null,
    ({ input }) => `cannot write ${wordingFault(input)}`
  )
);

/** Name of a lesson, challenge or option: part of addresses and of learners' records. */
export const name = v.pipe(
  v.string(),
  v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be lower-case words joined by hyphens'),
  v.maxLength(80)
);
