import * as v from 'valibot';

/** Longest name of a lesson, challenge, option or section; a longer one is no name of ours. */
export const nameSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
/** One spelling only, so that times sort as text. */
export const timeSchema = v.pipe(
  v.string(),
  v.regex(
    /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/,
    'must be a UTC time like 2030-05-01T08:15:00.000Z'
  )
);
