import * as v from 'valibot';
import { FOOT_M, type Bite } from '../../model';
import { formatBeside, formatTime } from '../display';
import { fading } from '../fading';
import { numberIn } from '../schema-parts';
import { drawnAfterBite, strikeDelay } from './tip-measures';
import { goalKind, weight } from './goal-kind';

/** Sooner than this after a bite nobody has felt it: the sweep was a guess, s. */
const REACTION_S = 0.15;

/** A tip that draws less line after the bite was not meant to set, m: a foot. */
const PULL_M = FOOT_M;

/** The rod sweeps firmly after the bite, no later than this. */
export const strike = goalKind({
  schema: v.strictObject({ kind: v.literal('strike'), within_s: numberIn(0.1, 120), weight }),
  figure: {
    unit: 's',
    name: 'Hook set after the bite',
    less: 'too early',
    more: 'too late',
    asked: ({ within_s }) => [REACTION_S, within_s],
    raise: () => 'Wait for the bite.',
    lower: (off) => `Set the hook ${off} sooner.`
  },
  role: 'main',
  isOfOneTurn: false,
  measure: (_, run) => strikeDelay(run),
  share: ({ within_s }, value, { left_s }) => {
    if (Number.isNaN(value)) return left_s < Infinity ? 0 : 1;
    return value < REACTION_S ? 0 : fading(value - within_s, within_s);
  },
  words: ({ within_s }, value, _, met) => ({
    name: 'Strike',
    asked: `firm, within ${formatTime(within_s)} of the bite`,
    reached: reachedWords(value, within_s, met)
  }),
  did: (_, value, _units, result, met) => {
    if (hasLeft(value, met)) return 'You left too soon: a fish could still have come.';
    if (Number.isNaN(value)) return 'Nothing bit, and you left it alone.';
    if (value === -Infinity) return 'You set, and this cast had no fish.';
    if (value === Infinity)
      return drawnAfterBite(result) < PULL_M
        ? 'It bit, and you never set.'
        : 'It bit, and your pull was too slow to set.';
    if (isGuess(value)) return 'You set as it bit, before anyone could feel it.';
    const time = formatTime(Math.abs(value));
    return `You set ${time} ${value < 0 ? 'before' : 'after'} the bite.`;
  },
  // Where the try is about how far it went.
  miss: (_, value, _units, _result, met) => {
    if (hasLeft(value, met)) return 'you left too soon for a fish';
    if (Number.isNaN(value)) return '';
    if (value === Infinity) return 'you never set';
    if (value === -Infinity) return 'you set, and this cast had no fish';
    if (isGuess(value)) return 'you set as it bit, before anyone could feel it';
    const time = formatTime(Math.abs(value));
    return `you set ${time} ${value < 0 ? 'before' : 'after'} the bite`;
  },
  advice: ({ within_s }, value, _result, _met, { fish = 'tap', isReeled, plane }) => {
    if (Number.isNaN(value)) return 'Stay with it longer';
    if (value === -Infinity) return NO_BITE[fish];
    if (value < REACTION_S) return 'Wait for the bite';
    const set = plane === 'lift' ? 'set' : 'sweep';
    if (value < Infinity)
      return `${isReeled ? `Reel down and ${set}` : 'Sweep'} sooner: within ${formatTime(within_s)} of the bite`;
    return isReeled
      ? `${ON_BITE[fish]}, reel down until you feel it, then ${set}`
      : `${ON_BITE[fish]}, ${set} firmly right away`;
  }
});

/** What there was to tell a cast without a fish by. */
const NO_BITE: Record<Bite['kind'], string> = {
  tap: 'Felt nothing? Don’t set',
  mush: 'Felt nothing? Don’t set',
  'weight gone': 'Weight still there? Don’t set',
  'moving off': 'Line not running off? Don’t set'
};

const ON_BITE: Record<Bite['kind'], string> = {
  tap: 'When it taps',
  mush: 'When it loads up',
  'weight gone': 'When the weight goes',
  'moving off': 'When the line runs off'
};

/** Whether the hand was done while something could still have bitten, and nothing had. */
const hasLeft = (value: number, met: number) => Number.isNaN(value) && met < 1;

/** At the bite, and too soon after it to have felt it. */
const isGuess = (value: number) => Math.abs(value) < REACTION_S;

function reachedWords(value: number, within_s: number, met: number): string {
  if (hasLeft(value, met)) return 'left too soon';
  if (Number.isNaN(value)) return 'nothing bit, and you waited';
  if (value === -Infinity) return 'nothing bit';
  if (value === Infinity) return 'never';
  const time = formatBeside(Math.abs(value), [0, value < 0 ? Infinity : within_s], formatTime);
  return `${time} ${value < 0 ? 'before' : 'after'} it`;
}
