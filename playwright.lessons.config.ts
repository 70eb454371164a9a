import config from './playwright.config';

/** Every lesson walked from end to end, for `npm run test:lessons`; npm test walks one for each kind of station. */
const [desktop, phone] = config.projects ?? [];

export default {
  ...config,
  testMatch: 'lessons.spec.ts',
  projects: [
    { ...desktop, grepInvert: /@narrow/ },
    { ...phone, grepInvert: /@any-width/ }
  ]
};
