import * as v from 'valibot';
import { SNAG_ENDS, snagEnd, type SnagEnd } from './bait-measures';
import { goalKind, weight } from './goal-kind';

const ENDS = Object.keys(SNAG_ENDS) as SnagEnd[];

/** The snag lets go, and the jig was not wedged tighter. The value is the place in SNAG_ENDS. */
export const freed = goalKind({
  schema: v.strictObject({ kind: v.literal('freed'), weight }),
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => ENDS.indexOf(snagEnd(result)),
  share: (_, value) => SNAG_ENDS[ENDS[value]],
  words: (_, value) => ({
    name: 'Snag',
    asked: 'freed, not wedged tighter',
    reached: ENDS[value]
  }),
  did: (_, value) => DID[ENDS[value]],
  drawn: () => ({ freed: true }),
  advice: (_, value, { stones }) =>
    ENDS[value] === 'never hung' && stones.some(({ touched }) => touched)
      ? SLID_OVER
      : ADVICE[ENDS[value]],
  step: (_, value) => (ENDS[value] === 'never hung' ? 'pull' : null)
});

const DID: Record<SnagEnd, string> = {
  freed: 'The jig hung, and you freed it.',
  'freed, but wedged tighter first': 'It came free, but you wedged it tighter first.',
  'never hung': 'The jig never hung.',
  'not freed': 'The jig still hangs.',
  'line broke': 'The line broke.'
};

const SLID_OVER = 'Pull more firmly into the rock: here you want it hung, and it slid over';

const ADVICE: Record<SnagEnd, string> = {
  freed: 'Do the same again',
  'freed, but wedged tighter first': 'Stop as soon as it hangs',
  'never hung': 'Move the rod on until the jig hangs',
  'not freed': 'Stop as soon as it hangs, and don’t pull harder',
  'line broke': 'Stop as soon as it hangs: the pull broke the line'
};
