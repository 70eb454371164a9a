import * as v from 'valibot';
import { formatLength, formatWay } from '../display';
import { earned } from '../fading';
import { numberIn } from '../schema-parts';
import { travelByRod } from './bait-measures';
import { goalKind, weight } from './goal-kind';

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
  role: 'main',
  isOfOneTurn: true,
  measure: (_, run) => travelByRod(run),
  // Twice as far is as wrong as half of it: running long is the fault that a hand has by nature.
  share(goal, value) {
    const [low, high] = limitsOf(goal);
    const outside_m = Math.max(low - value, value - high);
    return earned(1 - Math.min(value / low, high / Math.max(value, low)), outside_m / goal.band_m);
  },
  words(goal, value, units) {
    const asked = limitsOf(goal);
    return {
      name: 'Travel',
      asked: asked.map((m) => formatLength(m, units)).join(' to '),
      reached: formatWay(value, asked, units)
    };
  },
  miss: () => '',
  drawn: (goal) => ({ travel_m: limitsOf(goal) }),
  advice: null
});
