/** One core's part of `check-items.ts`: checks whole generators, and tells of each. */
import { generate, GENERATORS, type Generator, type Item } from '../src/lib/course/items';
import { faultsOf } from '../src/lib/course/items/check-item';
import { claimWords, isSaid, statedIn } from '../src/lib/course/items/claimed';
import { QUESTION_CLAIMS } from '../src/lib/course/items/claims';
import { inUnits } from '../src/lib/scoring';
import { blindFaults } from './blind-picks';
import { closeFallFaults } from './close-falls';
import { earlyFaults } from './early-moves';
import { liftFaults } from './lift-words';
import { printedFaults } from './printed-order';
import { tellingFaults, toldIn, type Told } from './telling-words';

export interface Task {
  ids: string[];
  seeds: readonly number[];
}

export interface Checked {
  id: string;
  asked: number;
  /** Questions that differ in more than the places of their options. */
  different: number;
  /** "17: what is wrong with the question of seed 17" */
  faults: string[];
  /** How often the key stood in each place; empty where there is none to choose. */
  places: number[];
  /** Share of questions in which the key is the longest option, ties divided; null for none to choose. */
  longest: number | null;
  seconds: number;
  /** Words of its options, and how often they were right. */
  told: Told;
}

/** A learner who meets a generator for years should not know its questions: so many in so many seeds. */
const LEAST_DIFFERENT = 200;
const MANY_SEEDS = 1000;

process.on('message', ({ ids, seeds }: Task) => {
  for (const id of ids) {
    const generator = GENERATORS.find((one) => one.id === id);
    if (generator) process.send?.(checked(generator, seeds));
  }
  process.send?.('done');
});

function checked(generator: Generator, seeds: readonly number[]): Checked {
  const start = performance.now();
  const found = seeds.map((seed) => made(generator, seed));
  const items = found.flatMap(({ item }) => (item ? [item] : []));
  const places = placesOf(items);
  const told = toldIn(items);
  // Seeds in a row put the key into each place in turn, so counts differ by one at most.
  const different = new Set(items.map(nameOf)).size;
  const few =
    seeds.length >= MANY_SEEDS && different < LEAST_DIFFERENT && !generator.few
      ? [`all: ${different} different questions, fewer than ${LEAST_DIFFERENT}`]
      : [];
  const uneven = Math.max(0, ...places) - Math.min(...places) > 1 ? ['all: uneven places'] : [];
  return {
    id: generator.id,
    asked: seeds.length,
    different,
    faults: [
      ...found.flatMap(({ faults }, i) => faults.map((fault) => `${seeds[i]}: ${fault}`)),
      ...uneven,
      ...rareKeys(items),
      ...blindFaults(items),
      ...tellingFaults(told),
      ...(seeds.length >= MANY_SEEDS ? unsaidFaults(generator, items) : []),
      ...few
    ],
    places,
    longest: longestOf(items),
    seconds: Math.round((performance.now() - start) / 1000),
    told
  };
}

/** Claims that none of so many questions makes. */
function unsaidFaults({ id }: Generator, items: readonly Item[]): string[] {
  const stated = [...new Set(items.flatMap(statedIn))];
  return claimWords(QUESTION_CLAIMS[id] ?? [])
    .filter((says) => !isSaid(says, stated))
    .map((says) => `all: it is claimed and never said: ${says}`);
}

/** The same for questions that differ in the order of their options alone. */
function nameOf({ ask, cases }: Item): string {
  return [ask, ...cases.map((one) => JSON.stringify(one)).sort()].join();
}

function made(generator: Generator, seed: number): { item?: Item; faults: string[] } {
  try {
    const item = generate(generator, seed);
    const faults = [faultsOf, printedFaults, closeFallFaults, earlyFaults, liftFaults];
    return { item, faults: faults.flatMap((find) => find(item)) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { faults: [error.message] };
  }
}

function placesOf(items: readonly Item[]): number[] {
  const places: number[] = [];
  for (const { answer } of items) {
    if (answer.form !== 'choose') continue;
    answer.options.forEach((_, i) => (places[i] ??= 0));
    places[answer.options.findIndex(({ id }) => id === answer.key)]++;
  }
  return places;
}

/** A key that is asked for less than this part of its fair share is one that nobody learns. */
const LEAST_SHARE = 0.5;
/** With fewer to be expected of each, chance alone leaves one out (Cochran 1954: five in a cell). */
const LEAST_EXPECTED = 5;

/** Keys that are hardly ever right, where all questions have the same options. */
function rareKeys(items: readonly Item[]): string[] {
  const asked = items.flatMap(({ answer }) => (answer.form === 'choose' ? [answer] : []));
  const names = asked.map(({ options }) => options.map(({ id }) => id).sort());
  if (new Set(names.map(String)).size !== 1) return [];
  const fair = asked.length / names[0].length;
  if (fair < LEAST_EXPECTED) return [];
  return names[0]
    .map((id) => ({ id, times: asked.filter(({ key }) => key === id).length }))
    .filter(({ times }) => times < LEAST_SHARE * fair)
    .map(({ id, times }) => `all: ${id} is right in ${times} of ${asked.length}`);
}

function longestOf(items: readonly Item[]): number | null {
  const shares = items.flatMap(({ answer }) => {
    if (answer.form !== 'choose') return [];
    const lengths = answer.options.map(({ says }) => inUnits(says, 'imperial').length);
    const longest = answer.options.filter((_, i) => lengths[i] === Math.max(...lengths));
    return [longest.some(({ id }) => id === answer.key) ? 1 / longest.length : 0];
  });
  return shares.length === 0 ? null : shares.reduce((sum, one) => sum + one, 0) / shares.length;
}
