import type { Challenge } from './challenge';

/** What the buttons are called that turn the rod toward more of the angle, less of it, and as a hook is set. */
export const ROD_BUTTONS: Record<Challenge['plane'], Record<1 | -1 | 'fast', string>> = {
  lift: { 1: 'Raise', '-1': 'Lower', fast: 'Raise fast' },
  sweep: { 1: 'Sweep', '-1': 'Forward', fast: 'Sweep fast' }
};
