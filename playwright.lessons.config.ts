import config from './playwright.config';
import { SHARP } from './tests/e2e/screens';

/**
 * For `npm run test:lessons`: every lesson walked from end to end, each try, there and
 * elsewhere, on five sizes of screen, by one switch, unseen by what is told, one's own rod before a camera wherever a try is made,
 * and a static folder under a path. npm test walks one lesson for each kind of station.
 */
const [phone, desktop] = config.projects ?? [];

export default {
  ...config,
  testMatch: [
    'lessons.spec.ts',
    'every-goal.spec.ts',
    'unseen-by-ear.spec.ts',
    'static-folder.spec.ts',
    'one-screen.spec.ts',
    'one-screen-elsewhere.spec.ts',
    'own-rod.spec.ts'
  ],
  projects: [
    { ...phone, use: { ...phone.use, ...SHARP }, grepInvert: /@any-width/ },
    { ...desktop, grepInvert: /@narrow/ }
  ]
};
