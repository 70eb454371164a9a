/** Words of options by which the right one is known, or left out, without reading the question. */
import type { Item } from '../src/lib/course/items';
import { inUnits } from '../src/lib/scoring';

/** Fewer options with the same words tell nothing yet. */
const LEAST_OPTIONS = 12;
/** Words as often right by chance, or as seldom, are met once in so many (binomial, either side). */
const RARE = 1e-4;
/** And off by a tenth at least: less gains nobody a mark on a sheet. A design value. */
const MARGIN = 0.1;

/** How often an option with these words was there, and how often it was right. */
export type Told = Record<string, { options: number; right: number }>;

/** An option's words as such, how it begins, and each number with what it counts. */
function wordsOf(says: string): string[] {
  const read = inUnits(says, 'imperial').replaceAll('\u00a0', ' ').toLowerCase();
  const [first, second = ''] = read.split(/[\s,:]+/);
  const counted = read.match(/half a second|[\d/½:.]+ [a-z’]+/g) ?? [];
  return [...new Set([`“${read}”`, `${first} …`, `${first} ${second} …`, ...counted])];
}

/** Counts of all words in the options of these questions. */
export function toldIn(items: readonly Item[]): Told {
  const told: Told = {};
  for (const { answer } of items) {
    if (answer.form !== 'choose') continue;
    for (const { id, says } of answer.options) {
      for (const words of wordsOf(says)) {
        const count = (told[words] ??= { options: 0, right: 0 });
        count.options++;
        if (id === answer.key) count.right++;
      }
    }
  }
  return told;
}

/** Two counts as one: of the whole bank. */
export function joined(all: readonly Told[]): Told {
  const sum: Told = {};
  for (const [words, { options, right }] of all.flatMap(Object.entries<Told[string]>)) {
    const count = (sum[words] ??= { options: 0, right: 0 });
    count.options += options;
    count.right += right;
  }
  return sum;
}

/** One option in three is right. */
const CHANCE = 1 / 3;

/** Words that tell the right option, or a wrong one, far more often than chance. */
export function tellingFaults(told: Told): string[] {
  return Object.entries(told)
    .filter(([, { options, right }]) => {
      const isOff = Math.abs(right / options - CHANCE) > MARGIN;
      return options >= LEAST_OPTIONS && isOff && chanceOf(right, options) < RARE;
    })
    .map(
      ([words, { options, right }]) => `all: ${words} is right in ${right} of ${options} options`
    );
}

/** Of so many or more right ones by chance, or of so few or fewer, whichever is less. */
function chanceOf(right: number, of: number): number {
  const shares = Array.from({ length: of + 1 }, (_, k) =>
    Math.exp(logChoose(of, k) + k * Math.log(CHANCE) + (of - k) * Math.log(1 - CHANCE))
  );
  const sum = (part: readonly number[]) => part.reduce((all, one) => all + one, 0);
  return Math.min(sum(shares.slice(right)), sum(shares.slice(0, right + 1)));
}

function logChoose(n: number, k: number): number {
  let log = 0;
  for (let i = 1; i <= k; i++) log += Math.log((n - k + i) / i);
  return log;
}
