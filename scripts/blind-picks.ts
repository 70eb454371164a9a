/** How often a question is answered right by rules that know nothing of fishing. */
import type { ChooseAnswer, Item, MarkAnswer, OrderAnswer } from '../src/lib/course/items';
import { inUnits } from '../src/lib/scoring';

/**
 * A rule may be right as often as chance, three standard deviations of so many draws more (the binomial
 * limit), and a tenth: what is true of jigs goes along with numbers, and no row of questions is free of
 * that. A design value.
 */
const DEVIATIONS = 3;
const MARGIN = 0.1;

/** Shares right of one question, by the rule's name, and of a blind guess. */
interface Tried {
  chance: number;
  rules: Readonly<Record<string, number>>;
}

/** Rules that are right more often than may be, each with its share and the most it may have. */
export function blindFaults(items: readonly Item[]): string[] {
  const all = items.map(triedOn);
  if (all.length === 0) return [];
  const mean = (of: (one: Tried) => number) =>
    all.reduce((sum, one) => sum + of(one), 0) / all.length;
  const chance = mean((one) => one.chance);
  const most = chance + DEVIATIONS * Math.sqrt((chance * (1 - chance)) / all.length) + MARGIN;
  return Object.keys(all[0].rules)
    .map((name) => ({ name, share: mean((one) => one.rules[name] ?? one.chance) }))
    .filter(({ share }) => share > most)
    .map(
      ({ name, share }) => `all: ${name} is right in ${percent(share)}, may be in ${percent(most)}`
    );
}

const percent = (share: number) => `${Math.round(100 * share)} %`;
const read = (text: string) => inUnits(text, 'imperial').replaceAll('\u00a0', ' ');

function triedOn({ ask, answer }: Item): Tried {
  if (answer.form === 'choose') return choosing(read(ask), answer);
  return answer.form === 'order' ? ordering(answer) : marking(read(ask), answer);
}

const NUMBER = /(\d+)\/(\d+)|(\d+)?½|\d+(?:\.\d+)?/g;

/** The numbers in some words, with the unit that follows; half a second has one, too. */
function numbersIn(text: string): { value: number; unit: string }[] {
  const said = text.replaceAll('half a second', '½ s').replaceAll(/(\d+):30/g, '$1½');
  return [...said.matchAll(NUMBER)].map((found) => {
    const [all, over, under, whole] = found;
    const value = over
      ? Number(over) / Number(under)
      : all.endsWith('½')
        ? Number(whole ?? 0) + 0.5
        : Number(all);
    const [, unit = ''] = /^ ?([a-z°]+)/.exec(said.slice(found.index + all.length)) ?? [];
    return { value, unit: unit.startsWith('sec') ? 's' : unit };
  });
}

const valueOf = (text: string, unit?: string) =>
  numbersIn(text).find((one) => unit === undefined || one.unit === unit)?.value;
/** Feet and inches alike, in feet; else the first number as it stands. */
function sizeOf(text: string): number | undefined {
  const [first] = numbersIn(text);
  return first && (first.unit === 'in' ? first.value / 12 : first.value);
}
function paceOf(text: string): number | undefined {
  const [size, s] = [sizeOf(text), valueOf(text, 's')];
  return size === undefined || !s ? undefined : size / s;
}
const HEDGES = /\b(about|may|maybe|most|mostly|often|usually|some|nearly|hardly|if|until|or)\b/gi;

type Score = (says: string, ask: string) => number | undefined;
const negative =
  (score: Score): Score =>
  (says, ask) => {
    const value = score(says, ask);
    return value === undefined ? undefined : -value;
  };
const seconds: Score = (says) => valueOf(says, 's');
const ounces: Score = (says) => valueOf(says, 'oz');
const isInAsk: Score = (says, ask) =>
  numbersIn(says).some((one) =>
    numbersIn(ask).some(({ value, unit }) => value === one.value && unit === one.unit)
  )
    ? 1
    : 0;
const RULES: Readonly<Record<string, Score>> = {
  'the longest': (says) => says.length,
  'the shortest': (says) => -says.length,
  'the highest number': sizeOf,
  'the lowest number': negative(sizeOf),
  'the most seconds': seconds,
  'the fewest seconds': negative(seconds),
  'the slowest': negative(paceOf),
  'the quickest': paceOf,
  'the heaviest': ounces,
  'the lightest': negative(ounces),
  'a number of the question': isInAsk,
  'the most hedged': (says) => says.match(HEDGES)?.length ?? 0
};

function choosing(ask: string, { options, key }: ChooseAnswer): Tried {
  const chance = 1 / options.length;
  const right = options.findIndex(({ id }) => id === key);
  const says = options.map((one) => read(one.says));
  const shareOf = (scores: readonly (number | undefined)[]) => {
    if (scores.some((one) => one === undefined)) return chance;
    const best = Math.max(...(scores as number[]));
    const top = scores.flatMap((one, i) => (one === best ? [i] : []));
    return top.includes(right) ? 1 / top.length : 0;
  };
  const rules = Object.entries(RULES).map(
    ([name, score]) => [name, shareOf(says.map((one) => score(one, ask)))] as const
  );
  const alike = likenesses(says);
  return {
    chance,
    rules: {
      ...Object.fromEntries(rules),
      'the middle number': shareOf(nearMiddle(says.map(sizeOf))),
      'one of those that begin alike': shareOf(alike),
      'the one that begins by itself': shareOf(alike.map((count) => -count))
    }
  };
}

/** How many others begin with the same words, up to a comma. */
function likenesses(says: readonly string[]): number[] {
  const begun = says.map((one) => one.split(',')[0]);
  return begun.map((one) => begun.filter((other) => other === one).length - 1);
}

/** 1 for the middle of these in size, 0 for the others. */
function nearMiddle(sizes: readonly (number | undefined)[]): (number | undefined)[] {
  const sorted = sizes.filter((one) => one !== undefined).sort((a, b) => a - b);
  return sizes.map((one) =>
    one === undefined ? undefined : one === sorted[sorted.length >> 1] ? 1 : 0
  );
}

function ordering({ things, key }: OrderAnswer): Tried {
  let chance = 1;
  for (let i = 2; i <= things.length; i++) chance /= i;
  const says = key.map((id) => read(things.find((one) => one.id === id)?.says ?? ''));
  // The row is in the right order: a rule is right that finds it falling, or rising, all along.
  const shareOf = (score: Score, sign: number) => {
    const row = says.map((one) => score(one, '') ?? NaN);
    if (row.some(Number.isNaN)) return chance;
    const steps = row.slice(1).map((value, i) => sign * (row[i] - value));
    if (steps.some((step) => step < 0)) return 0;
    return steps.some((step) => step === 0) ? chance : 1;
  };
  const scores = { length: RULES['the longest'], number: sizeOf, seconds, pace: paceOf, ounces };
  const rules = Object.entries(scores).flatMap(([name, score]) => [
    [`by ${name}, most first`, shareOf(score, 1)] as const,
    [`by ${name}, least first`, shareOf(score, -1)] as const
  ]);
  return { chance, rules: Object.fromEntries(rules) };
}

const FOOT_M = 0.3048;
/**
 * A band so wide, as a share of the key, takes a good part of the ruler wherever it stands, so that no place
 * tells anything: of a fall whose skirt nobody knows, for one.
 */
const WIDE = 0.3;
const PLACES = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

function marking(ask: string, { quantity, key, band, most }: MarkAnswer): Tried {
  const isRight = (place: number | undefined) =>
    place !== undefined && Math.abs(place - key) <= band ? 1 : 0;
  const inAsk = numbersIn(ask).flatMap(({ value, unit }) => {
    if (quantity === 'time') return unit === 's' ? [value] : [];
    return unit === 'ft' ? [value * FOOT_M] : unit === 'in' ? [(value * FOOT_M) / 12] : [];
  });
  const chance = Math.min(1, (2 * band) / most);
  const places = PLACES.map((at) => {
    const share = band > WIDE * key ? chance : isRight(at * most);
    return [`the ruler at ${at}`, share] as const;
  });
  return {
    chance,
    rules: {
      ...Object.fromEntries(places),
      'the last number of the question': isRight(inAsk.at(-1)),
      'the number before it': isRight(inAsk.at(-2))
    }
  };
}
