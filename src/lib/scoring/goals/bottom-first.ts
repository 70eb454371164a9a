import * as v from 'valibot';
import { formatBeside, formatTime } from '../display';
import { earned, fading, HAIR } from '../fading';
import { numberIn } from '../schema-parts';
import { COUNTED_TO_S, isRaised, waitAfterTouch, waitInFigures } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** What a right moment is worth of a rod that went up instead: the count was made, and not what ends it. */
const RAISED_SHARE = 0.5;
/** So much too soon earns nothing by nearness, s: half a second passes, which a count in whole seconds may be off. */
const TOO_SOON_S = 6 * COUNTED_TO_S;
/** A whole second too soon has lost what is for having met it, s. */
const MISCOUNTED_S = 2 * COUNTED_TO_S;

/** Less is told as no time, s: it would round to none, or nearly. */
const NOT_TOLD_S = 0.1;

/** The rod waits until the bait is down, is lowered then, and does not wait longer than this. */
export const bottomFirst = goalKind({
  schema: v.strictObject({ kind: v.literal('bottom_first'), within_s: numberIn(0.1, 120), weight }),
  figure: {
    unit: 's',
    name: 'Wait after it touched bottom',
    less: 'too early',
    more: 'too late',
    asked: ({ within_s }) => [0, within_s],
    of: (_, { result }) => waitInFigures(result),
    raise: (off) => `Wait ${off} longer: it was still falling.`,
    lower: (off) => `Move ${off} sooner after it touches.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => waitAfterTouch(result),
  share: ({ within_s }, value, { result }) => {
    if (Number.isNaN(value)) return 1;
    const timely = value < 0 ? hastened(-value) : fading(value - within_s, within_s);
    return isRaised(result) ? RAISED_SHARE * timely : timely;
  },
  words: ({ within_s }, value, _, met) => ({
    name: 'Wait for the bottom',
    asked: `lowered within ${formatTime(within_s)} of the touch, not before`,
    reached: reachedWords(value, within_s, met)
  }),
  did: (_, value, __, result) => {
    if (Number.isNaN(value)) return null;
    if (value === Infinity) return 'You never moved the rod.';
    const moved = `You ${isRaised(result) ? 'raised' : 'moved'} the rod`;
    if (value === -Infinity) return `${moved} while it was still falling.`;
    if (value >= 0 && value < NOT_TOLD_S) return `${moved} as it touched down.`;
    return `${moved} ${besideTouch(value)} it was down.`;
  },
  advice: (_, value, result) => {
    if (isRaised(result)) {
      return value < 0
        ? 'Lower it, once the line stops running out'
        : 'Lower it: raised, it drags the jig';
    }
    if (value < 0) return 'Wait until the line stops running out';
    return value === Infinity ? 'Lower the rod once it’s down' : 'Lower the rod sooner';
  },
  // Who raised it in time, or late, is told the way alone.
  step: (_, value, result) => (isRaised(result) && value >= 0 ? null : 'rest')
});

function hastened(early_s: number): number {
  return earned(early_s / TOO_SOON_S, (HAIR * early_s) / MISCOUNTED_S);
}

/** "1.6 s after", "just before". */
function besideTouch(value: number, within_s = Infinity): string {
  const side = value < 0 ? 'before' : 'after';
  const time_s = Math.abs(value);
  if (time_s < NOT_TOLD_S) return `just ${side}`;
  return `${formatBeside(time_s, [0, value < 0 ? Infinity : within_s], formatTime)} ${side}`;
}

function reachedWords(value: number, within_s: number, met: number): string {
  if (Number.isNaN(value)) return 'taken on the way down';
  if (value === Infinity) return 'never moved';
  if (value === -Infinity) return 'while it was still falling';
  const isInTime = value >= 0 && value <= within_s;
  return `${isInTime && met < 1 ? 'raised ' : ''}${besideTouch(value, within_s)}`;
}
