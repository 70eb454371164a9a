import type { Report } from '$lib/wire';

/** How someone came by an answer, in their own words. */
export const REPORT_WORDS: readonly { report: Report; says: string }[] = [
  { report: 'knew', says: 'I knew it' },
  { report: 'worked out', says: 'I figured it out' },
  { report: 'guessed', says: 'I guessed' }
];
