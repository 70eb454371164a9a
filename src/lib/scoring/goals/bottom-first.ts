import * as v from 'valibot';
import { formatBeside, formatTime } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { waitAfterTouch } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** The rod waits until the bait is down, and then not longer than this. */
export const bottomFirst = goalKind({
  schema: v.strictObject({ kind: v.literal('bottom_first'), within_s: numberIn(0.1, 120), weight }),
  figure: {
    unit: 's',
    name: 'Wait after it touched bottom',
    less: 'too early',
    more: 'too late',
    asked: ({ within_s }) => [0, within_s],
    raise: (off) => `Wait ${off} longer: it was still falling.`,
    lower: (off) => `Move ${off} sooner after it touches.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, { result }) => waitAfterTouch(result),
  // Too soon by half the time there is earns nothing, as a travel off by one more half of its band.
  share: ({ within_s }, value) => {
    if (Number.isNaN(value)) return 1;
    return value < 0 ? fading(-value, within_s / 2) : fading(value - within_s, within_s);
  },
  words: ({ within_s }, value) => ({
    name: 'Wait for the bottom',
    asked: `moved within ${formatTime(within_s)} of the touch, not before`,
    reached: reachedWords(value, within_s)
  }),
  did: (_, value) => {
    if (Number.isNaN(value)) return null;
    if (value === Infinity) return 'You never moved the rod.';
    if (value < 0) return `You moved the rod ${formatTime(-value)} before it was down.`;
    return `You moved the rod ${formatTime(value)} after it was down.`;
  },
  advice: (_, value) =>
    value < 0
      ? 'Wait until the line stops running out'
      : 'Move the rod as soon as the line stops running out',
  step: () => 'rest'
});

function reachedWords(value: number, within_s: number): string {
  if (Number.isNaN(value)) return 'taken on the way down';
  if (value === Infinity) return 'never moved';
  const time = formatBeside(Math.abs(value), [0, value < 0 ? Infinity : within_s], formatTime);
  return `${time} ${value < 0 ? 'before' : 'after'}`;
}
