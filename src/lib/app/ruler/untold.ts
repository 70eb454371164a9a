import type { Phase } from '$lib/practice';

/** What stands where a try’s result would, once it is not told: that nothing is broken, and why. */
export const UNTOLD: Record<Phase, { heading: string; text: string }> = {
  // In sight each try is told, unless today’s model cannot measure it.
  seen: { heading: 'No result on this one', text: 'Keep going.' },
  half_seen: {
    heading: 'No result on this one',
    text: 'That’s on purpose: you see half of the hidden tries. Did it feel right?'
  },
  unseen: {
    heading: 'Close enough',
    text: 'No result to read: with the jig hidden you only hear about a miss.'
  },
  kept: {
    heading: 'No result on this one',
    text: 'This is the check. You get the results at the end.'
  }
};
