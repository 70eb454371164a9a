import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { drawnByReel, slackReeled } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** A bait that the reel draws this far has been dragged with it; and so much further earns nothing, m. */
export const DRAGGED_M = 0.05;

/** Line that the reel takes in while the bait lies still, m. */
export const reeled = goalKind({
  schema: v.strictObject({ kind: v.literal('reeled'), least_m: numberIn(0.05, 30), weight }),
  figure: {
    unit: 'm',
    name: 'Slack reeled in',
    less: 'too little',
    more: 'too much',
    asked: ({ least_m }) => [least_m, null],
    raise: (off) => `Reel in ${off} more slack.`,
    lower: (off) => `Reel in ${off} less.`
  },
  role: 'aim',
  isOfOneTurn: false,
  measure: (_, run) => slackReeled(run),
  share: ({ least_m }, value, run) =>
    fading(least_m - value, least_m) * fading(drawnByReel(run) - DRAGGED_M, DRAGGED_M),
  words: ({ least_m }, value, units) => ({
    name: 'Slack reeled in',
    asked: `${formatLength(least_m, units)} or more`,
    reached: formatBeside(value, [least_m, Infinity], (m) => formatLength(m, units))
  }),
  miss: ({ least_m }, value, units) => {
    const length = (m: number) => formatLength(m, units);
    if (value < DRAGGED_M) return 'the reel took up no slack';
    if (value >= least_m) return '';
    return `the reel took up ${formatBeside(value, [least_m, Infinity], length)} of slack, not ${length(least_m)}`;
  },
  advice: () => 'Turn the rod back, then reel in the slack while the jig lies still'
});
