import type { Hop } from '../../model';
import * as v from 'valibot';
import { formatBeside, formatLength } from '../display';
import { clamped, earned, HAIR } from '../fading';
import { timesOf } from '../times-of';
import { whole } from '../schema-parts';
import { NO_MOVE_M } from '../run-measures';
import { goalKind, length, weight } from './goal-kind';

/**
 * Flights lower than this part of the lowest hop asked for are skips, and not counted; from there to that
 * height a flight grows into a whole hop, so that none is a hop by a hair.
 */
const SKIP_PART = 0.5;
/** Lower than this part of it a flight costs nothing at all where it was not asked for. */
const MERE_SKIP_PART = 0.3;

/** So many hops, each as high as `height_m` says (lowest, highest). */
export const hops = goalKind({
  schema: v.strictObject({
    kind: v.literal('hops'),
    count: whole(1, 50),
    height_m: v.pipe(
      v.tuple([length, length]),
      v.check(([low, high]) => low < high, 'must be lowest, then highest')
    ),
    weight
  }),
  figure: {
    unit: 'm',
    name: 'How high it hopped',
    less: 'too low',
    more: 'too high',
    asked: ({ height_m }) => height_m,
    of: ({ height_m }, { result }) => farthestOut(height_m, result.hops),
    raise: (off) => `Aim ${off} higher.`,
    lower: (off) => `Aim ${off} lower.`
  },
  role: 'main',
  isOfOneTurn: true,
  measure: ({ height_m }, { result }) => counted(height_m, result.hops).length,
  share: ({ count, height_m }, _, { result }) => shareOfHops(count, height_m, result.hops),
  words: ({ count, height_m: [low, high] }, value, units, met) => ({
    name: 'Hops',
    asked: `${count}, ${formatLength(low, units)} to ${formatLength(high, units)} high`,
    reached: value === count && met < 1 ? `${value}, ${heightAmiss(count)}` : `${value}`
  }),
  // Not how often, where that was right: how high says the sentence before.
  miss: ({ count }, value) =>
    value === count ? '' : `and hopped ${timesOf(value)}, not ${timesOf(count)}`,
  did: ({ count, height_m: [low, high] }, value, units, result) => {
    const counts = value === count ? '' : `, not ${timesOf(count)}`;
    if (value === 0) {
      const rose_m = result.peak_height_m;
      if (rose_m < NO_MOVE_M) return 'It never hopped.';
      const rose = formatBeside(rose_m, [low, Infinity], (m) => formatLength(m, units));
      return `It rose only ${rose}; at least ${formatLength(low, units)} was asked.`;
    }
    const told = (m: number) => formatLength(m, units);
    const heights = counted([low, high], result.hops).map(({ height_m }) => height_m);
    const [least, most] = [Math.min(...heights), Math.max(...heights)].map((m) =>
      formatBeside(m, [low, high], told)
    );
    const height = least === most ? most : `${least} to ${most}`;
    const tooLow = lowWords([low, high], result.hops);
    // Of one rise alone: a stroke, or a lift, is no hop to who made it.
    if (value === 1 && count === 1 && tooLow === '')
      return `It rose ${height}; ${told(low)} to ${told(high)} was asked.`;
    return `Hopped ${timesOf(value)}${counts}, ${height} high${tooLow}; ${told(low)} to ${told(high)} was asked.`;
  },
  drawn: ({ count, height_m }) => ({ hops: count, height_m }),
  advice: null
});

/** By their number they were right. */
function heightAmiss(count: number): string {
  return count === 1 ? 'not the right height' : 'not all the right height';
}

/** Of the hops that count the one that misses most, the highest of those that miss none. */
function farthestOut(heights: Heights, all: readonly Hop[]): number {
  const [lowest, highest] = heights;
  const hops = counted(heights, all);
  const missOf = (height_m: number) => Math.max(0, lowest - height_m, height_m - highest);
  return (hops.length > 0 ? hops : all)
    .map(({ height_m }) => height_m)
    .reduce(
      (worst, one) => {
        const more_m = missOf(one) - missOf(worst);
        return more_m > 0 || (more_m === 0 && one > worst) ? one : worst;
      },
      hops.length > 0 ? hops[0].height_m : 0
    );
}

type Heights = readonly [number, number];

/** Whether a flight so high counts as a hop where hops of these heights are asked: to the marks, words and pictures. */
export function isHop([lowest]: Heights, height_m: number): boolean {
  return height_m >= SKIP_PART * lowest;
}

function counted(heights: Heights, all: readonly Hop[]): readonly Hop[] {
  return all.filter(({ height_m }) => isHop(heights, height_m));
}

/** Those that are no hop, and higher than a mere skip: ", and twice too low to count". */
function lowWords(heights: Heights, all: readonly Hop[]): string {
  const low = all.filter((hop) => !isHop(heights, hop.height_m) && extra(heights, hop) > 0).length;
  return low === 0 ? '' : `, and ${timesOf(low)} too low to count`;
}

/** 0–1: how far a hop's height is from what was asked, in reaches. */
function missOf([lowest, highest]: Heights, { height_m }: Hop): number {
  const tooLow = (lowest - height_m) / ((1 - SKIP_PART) * lowest);
  return clamped(Math.max(tooLow, (height_m - highest) / (highest - lowest)));
}

/** 0–1: how much of a hop one beyond those asked is: what is counted a whole one, a mere skip nothing. */
function extra([lowest]: Heights, { height_m }: Hop): number {
  return clamped((height_m / lowest - MERE_SKIP_PART) / (SKIP_PART - MERE_SKIP_PART));
}

/** Of the best `count` hops each that misses, and each one too many, is as much of one done wrong. */
function shareOfHops(count: number, heights: Heights, all: readonly Hop[]): number {
  const hops = [...all].sort((a, b) => missOf(heights, a) - missOf(heights, b));
  const misses = Array.from({ length: count }, (_, i) => (hops[i] ? missOf(heights, hops[i]) : 1));
  const extras = hops.slice(count).map((hop) => extra(heights, hop));
  const tooMany = sum(extras);
  const off = (sum(misses) + tooMany) / (count + tooMany);
  // Not yet counted, a skip costs by nearness alone.
  return earned(off, Math.max(...misses, ...extras.map((one) => one - (1 - HAIR))));
}

function sum(parts: readonly number[]): number {
  return parts.reduce((all, one) => all + one, 0);
}
