import * as v from 'valibot';
import { formatBeside, formatSpeed } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { peakTipSpeed } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** Twice the speed allowed earns nothing. */
const REACH_IN_LIMITS = 1;
/** So little over the speed allowed is no jerk. */
const NEARLY = 1.15;

/** Fastest the tip went, m/s: a jerk that throws the bait is no lift, and nobody can repeat it. */
export const tipSpeed = goalKind({
  schema: v.strictObject({ kind: v.literal('tip_speed'), most_m_s: numberIn(0.1, 60), weight }),
  role: 'side',
  isOfOneTurn: true,
  measure: (_, { result }) => peakTipSpeed(result),
  share: ({ most_m_s }, value) => fading(value - most_m_s, REACH_IN_LIMITS * most_m_s),
  words: ({ most_m_s }, value, units) => ({
    name: 'Top speed of the tip',
    asked: `at most ${formatSpeed(most_m_s, units)}`,
    reached: formatBeside(value, [0, most_m_s], (speed) => formatSpeed(speed, units))
  }),
  miss: ({ most_m_s }, value, units) => {
    const speed = (m_s: number) => formatSpeed(m_s, units);
    return `the tip went ${formatBeside(value, [0, most_m_s], speed)}; the limit is ${speed(most_m_s)}`;
  },
  advice: ({ most_m_s }, value) =>
    value < NEARLY * most_m_s
      ? 'Move the rod a touch more gently'
      : 'Move the rod more gently: that was a jerk'
});
