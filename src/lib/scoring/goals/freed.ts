import * as v from 'valibot';
import type { Result } from '../../model';
import { hasGivenSlack, SNAG_ENDS, snagEnd, type SnagEnd } from './bait-measures';
import { goalKind, weight, type AdvisedTask } from './goal-kind';

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
  advice: (_, value, result, __, { plane }) => {
    const end = ENDS[value];
    if (end === 'never hung' && result.stones.some(({ touched }) => touched)) return INTO_ROCK;
    return end === 'not freed' ? stillHung(result, plane) : ADVICE[end];
  },
  step: (_, value) => (ENDS[value] === 'never hung' ? 'pull' : null)
});

const DID: Record<SnagEnd, string> = {
  freed: 'The jig hung, and you freed it.',
  'freed, but wedged tighter first': 'It came free, but you wedged it tighter first.',
  'never hung': 'The jig never hung.',
  'not freed': 'The jig still hangs.',
  'line broke': 'The line broke.'
};

const INTO_ROCK = 'Pull more firmly into the rock: here you want it hung';

const ADVICE: Record<Exclude<SnagEnd, 'not freed'>, string> = {
  freed: 'Do the same again',
  'freed, but wedged tighter first': 'Stop as soon as it hangs',
  'never hung': 'Move the rod on until the jig hangs',
  'line broke': 'Stop as soon as it hangs: the pull broke the line'
};

/** What was left out by who did not pull it home. */
function stillHung(result: Result, plane: AdvisedTask['plane']): string {
  if (result.events.some(({ kind }) => kind === 'set deeper'))
    return 'Stop as soon as it hangs: the pull wedged it';
  if (!hasGivenSlack(result))
    return `Once it hangs, give it slack: rod ${plane === 'lift' ? 'down' : 'toward the jig'}`;
  return plane === 'lift'
    ? 'The slack is right: now lift high, gently'
    : 'The slack is right: now shake it, three small pulls that come tight';
}
