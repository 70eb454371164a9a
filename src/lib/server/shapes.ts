import * as v from 'valibot';
import { TOKEN_PATTERN } from './token';

export { line, words } from '../practice/fields';

/** Shapes of what comes in from outside; every size is bounded here. */
export const token = v.pipe(v.string(), v.regex(TOKEN_PATTERN, 'must be a token'));
/** An id made on a phone: 80 random bits or more. */
export const madeId = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]{16,64}$/, 'must be an id'));
export const label = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
export const time = v.pipe(v.string(), v.isoTimestamp(), v.maxLength(30));

/** Two minutes at 100 samples a second: practice water ends every try before. */
const MAX_SAMPLES = 12_100;
const angle = v.pipe(v.number(), v.minValue(-360), v.maxValue(360));
const angles = v.union([angle, v.pipe(v.array(angle), v.minLength(2), v.maxLength(MAX_SAMPLES))]);
const lineIn = v.pipe(v.number(), v.minValue(-60), v.maxValue(60));

export const rodInput = v.strictObject({
  kind: v.literal('rod_input'),
  rate_Hz: v.literal(100),
  elevation_deg: angles,
  azimuth_deg: angles,
  line_in_m: v.optional(v.pipe(v.array(lineIn), v.minLength(2), v.maxLength(MAX_SAMPLES)))
});
