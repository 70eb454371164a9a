import config from './playwright.config';
import { SHARP } from './tests/e2e/screens';

/**
 * For `npm run test:long`: all walks that `npm test` leaves out, tagged `@long`, and every lesson as a whole. Each
 * lesson is walked from end to end, each try, there and elsewhere, on five sizes of screen, by one switch, unseen by
 * what is told; one's own rod stands before a camera wherever a try is made; a static folder lies under a path; and
 * what npm test looks at on one width, by day, in a short list or in one of its kind is looked at on the other,
 * by night, in a long one and in each.
 */
const [phone, desktop] = config.projects ?? [];

export default {
  ...config,
  grep: /@long|(lessons|every-goal|unseen-by-ear)\.spec/,
  projects: [
    { ...phone, use: { ...phone.use, ...SHARP }, grepInvert: /@any-width/ },
    { ...desktop, grepInvert: /@narrow/ }
  ]
};
