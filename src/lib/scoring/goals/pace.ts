import * as v from 'valibot';
import { formatBeside, formatPace, formatPaces, type Units } from '../display';
import { fading } from '../fading';
import { paceEnds } from './bait-measures';
import { goalKind, range, weight } from './goal-kind';

/** Outside its range by this part of the range's near edge, a pace earns nothing. */
const REACH_IN_EDGES = 0.5;

const besideCounts = (value: number, [low, high]: readonly [number, number], units: Units) =>
  formatBeside(value, [low, high], (m_s) => formatPace(m_s, units));

/**
 * The bait's pace along the bottom, m/s: its fast end where that is too fast, else its slow end where
 * that is too slow, else the middle of both. So a row of jerks is no pace, however fast it is on the whole.
 */
export const pace = goalKind({
  schema: v.strictObject({ kind: v.literal('pace'), m_s: range(20), weight }),
  figure: {
    unit: 'm/s',
    name: 'How fast it went',
    less: 'too slow',
    more: 'too fast',
    asked: ({ m_s }) => m_s,
    raise: (off) => `Go ${off} faster.`,
    lower: (off) => `Go ${off} slower.`
  },
  role: 'main',
  isOfOneTurn: true,
  measure: ({ m_s: [low, high] }, run) => {
    const [slow, fast] = paceEnds(run);
    if (fast > high) return fast;
    return slow < low ? slow : (slow + fast) / 2;
  },
  // By the worse end, whichever is told: too fast by a hair is no better than a slow end that is far off.
  share: ({ m_s: [low, high] }, _, run) => {
    const [slow, fast] = paceEnds(run);
    return Math.min(
      fading(low - slow, REACH_IN_EDGES * low),
      fading(fast - high, REACH_IN_EDGES * high)
    );
  },
  words: ({ m_s: [low, high] }, value, units) => ({
    name: 'Pace',
    asked: formatPaces([low, high], units),
    reached: besideCounts(value, [low, high], units)
  }),
  miss: ({ m_s: [low, high] }, value, units) => {
    const reached = besideCounts(value, [low, high], units);
    // Its slow end, which a move that is quick on the whole may have as well.
    return value > high
      ? `at its quickest it went ${reached}; the limit is ${formatPace(high, units)}`
      : `at its slowest it went ${reached}; the limit is ${formatPace(low, units)}`;
  },
  drawn: ({ m_s }) => ({ speed_m_s: m_s }),
  advice: ({ m_s }, value) => (value > m_s[1] ? 'Go slower' : 'Keep it moving: don’t let it lag'),
  step: () => 'pull'
});
