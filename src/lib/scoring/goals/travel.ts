import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { clamped, fading } from '../fading';
import { numberIn } from '../schema-parts';
import { travelByRod } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** One more band outside the band it is another move altogether: nothing. Larger is kinder. */
const REACH_IN_BANDS = 1;

interface Asked {
  target_m: number;
  band_m: number;
}

/** Nearest and farthest that get full marks, m: what is graded, drawn and told. */
const limitsOf = ({ target_m, band_m }: Asked): [number, number] => [
  target_m - band_m,
  target_m + band_m
];

/**
 * The bait's travel towards the angler, m: full marks within `band_m` of the target. The reel recovers
 * slack, the rod moves the bait: what the bait goes while the reel turns does not count.
 */
export const travel = goalKind({
  schema: v.pipe(
    v.strictObject({
      kind: v.literal('travel'),
      target_m: numberIn(0.01, 30),
      band_m: numberIn(0.005, 10),
      weight
    }),
    v.check((goal) => goal.band_m < goal.target_m, 'band_m must be smaller than target_m')
  ),
  figure: {
    unit: 'm',
    name: 'How far the jig went',
    less: 'too short',
    more: 'too far',
    asked: limitsOf,
    raise: (off) => `Aim ${off} farther than feels right.`,
    lower: (off) => `Aim ${off} shorter than feels right.`
  },
  role: 'aim',
  isOfOneTurn: true,
  measure: (_, run) => travelByRod(run),
  share(goal, value) {
    const [low, high] = limitsOf(goal);
    return fading(Math.max(low - value, value - high), REACH_IN_BANDS * goal.band_m);
  },
  // Twice as far is as wrong as half of it.
  progress(goal, value) {
    const [low, high] = limitsOf(goal);
    return clamped(Math.min(value / low, high / value));
  },
  words(goal, value, units) {
    const length = (m: number) => formatLength(m, units);
    return {
      name: 'Travel',
      asked: limitsOf(goal).map(length).join(' to '),
      reached: formatBeside(value, limitsOf(goal), length)
    };
  },
  miss: () => '',
  drawn: (goal) => ({ travel_m: limitsOf(goal) }),
  advice: null
});
