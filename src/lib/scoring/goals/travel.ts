import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { clamped, fading } from '../fading';
import { numberIn } from '../schema-parts';
import { travelByRod } from './bait-measures';
import { goalKind, weight } from './goal-kind';

/** One more band outside the band it is another move altogether: nothing. Larger is kinder. */
const REACH_IN_BANDS = 1;

/**
 * The bait's travel towards the angler, m: full marks where |travel − target| ≤ band. The reel recovers
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
    asked: ({ target_m, band_m }) => [target_m - band_m, target_m + band_m],
    raise: (off) => `Aim ${off} farther than feels right.`,
    lower: (off) => `Aim ${off} shorter than feels right.`
  },
  role: 'aim',
  isOfOneTurn: true,
  measure: (_, run) => travelByRod(run),
  share: ({ target_m, band_m }, value) =>
    fading(Math.abs(value - target_m) - band_m, REACH_IN_BANDS * band_m),
  progress: ({ target_m, band_m }, value) => clamped(value / (target_m - band_m)),
  words: ({ target_m, band_m }, value, units) => ({
    name: 'Travel',
    asked: `${formatLength(target_m - band_m, units)} to ${formatLength(target_m + band_m, units)}`,
    reached: formatBeside(value, [target_m - band_m, target_m + band_m], (m) =>
      formatLength(m, units)
    )
  }),
  miss: () => '',
  drawn: ({ target_m, band_m }) => ({ travel_m: [target_m - band_m, target_m + band_m] }),
  advice: null
});
