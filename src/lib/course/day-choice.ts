import { ft } from './items/draw';
import { fahrenheitToCelsius, seededRandom, type ScenarioInput } from '../model';
import { pick } from './items/draw';
import { saidOut } from './items/said';
import { waterWith } from './lessons/fathomley';
import { lowRun, uprightRun } from './lessons/runs';
import type { ShownRun } from './lesson';
import { inTurn, lift, pause, reel, sweep, swum, times } from './retrieves/moves';
import { seasonRowAt } from './season-map';

/** What can be done with a day; all but moving is a retrieve that the model runs. */
export const DAY_CHOICES = [
  { id: 'move', says: 'Move first, same retrieve' },
  { id: 'drag', says: 'Short, slow drags, long waits' },
  { id: 'drag-hop', says: 'Drags with a short hop' },
  { id: 'strokes', says: 'Strokes, short waits' },
  { id: 'shake', says: 'Shake in place, longer waits' },
  { id: 'swim', says: 'Swim it off bottom, no waits' }
] as const;
export type DayChoice = (typeof DAY_CHOICES)[number]['id'];
export type DayRetrieve = Exclude<DayChoice, 'move'>;

/**
 * Why one would. Most go for more than one choice, and one that is true may not be why: the model tells
 * what is true of a retrieve, the day what counts.
 */
export const DAY_REASONS = [
  { id: 'near', says: 'It stays close to one spot' },
  { id: 'down', says: 'It never leaves bottom' },
  { id: 'rises', says: 'It comes up off bottom' },
  { id: 'covers', says: 'It covers more bottom' },
  { id: 'empty', says: 'There’s no fish here' }
] as const;
export type DayReason = (typeof DAY_REASONS)[number]['id'];

/** What fish show. Common practice, no source: what is seen of the fish comes before the season. */
const SIGNS: readonly Pick<Day, 'says' | 'best' | 'why' | 'counts' | 'asGood'>[] = [
  {
    says: 'Ten good casts, no bites, and no fish on the graph.',
    best: 'move',
    why: 'The spot is empty.',
    counts: ['empty', 'covers']
  },
  {
    says: 'Fish follow it, turn away, and won’t eat.',
    best: 'shake',
    why: 'Fish that look and won’t eat want it close to still.',
    counts: ['near']
  },
  {
    says: 'Fish on bottom, and not one follows.',
    best: 'drag',
    asGood: 'shake',
    why: 'Fish that won’t move need it kept in front of them.',
    counts: ['near', 'down']
  },
  {
    says: 'A school chasing bait, well up off bottom.',
    best: 'swim',
    asGood: 'strokes',
    why: 'Fish well up want it at their height. Strokes reach them, too.',
    counts: ['rises']
  }
];
const NO_SIGN = 'Your first cast of the day.';
/** Days on which only the map tells, among all. */
const MAP_PART = 0.5;
/** Each well inside a row of the map, °F. */
const MAP_DAYS: readonly (Pick<Day, 'best' | 'counts' | 'highest_m' | 'whenDown'> & {
  degF: readonly number[];
})[] = [
  {
    degF: [40, 42, 44, 46],
    best: 'drag',
    counts: ['near'],
    whenDown: 'True, and some guides go by it. Most go by how close it stays.'
  },
  {
    degF: [53, 55, 57],
    best: 'drag-hop',
    counts: ['near', 'rises'],
    highest_m: ft(1.5),
    whenDown: 'True, and some guides go by it. Most add a short hop.'
  },
  {
    degF: [78, 80, 82],
    best: 'strokes',
    counts: ['rises', 'covers'],
    whenDown: 'True, and some guides drag deep instead. Most want it to rise and fall.'
  }
];
/** Where any mood may be met, °F: neither the coldest nor the warmest. */
const SIGN_DAYS_F = [55, 62, 66, 70];
/** Deeper, the tasks' hop and strokes come up too high, as the line is steeper: those ask for another hand. */
const DEPTHS_M = [20, 22, 25].map(ft);

export interface Day {
  degF: number;
  depth_m: number;
  says: string;
  best: DayChoice;
  /** Right as well by the same reason, and so not offered. */
  asGood?: DayChoice;
  why: string;
  /** Reasons that this day gives; common practice, no source. */
  counts: readonly DayReason[];
  /** What rises higher than this is out of reach of the day’s fish, m: a hop's most. Common practice, no source. */
  highest_m?: number;
  /** What is said where guides differ on whether a jig that never leaves bottom is enough. Common practice, no source. */
  whenDown?: string;
}

/**
 * What can be done on this day: before the first cast nobody knows that a spot is empty, and once fish have
 * shown what they do a drag with a short hop is in between.
 */
export function choicesOn({ says, asGood }: Day): readonly (typeof DAY_CHOICES)[number][] {
  const leftOut = says === NO_SIGN ? 'move' : 'drag-hop';
  return DAY_CHOICES.filter(({ id }) => id !== asGood && id !== leftOut);
}

export function reasonsOn({ says }: Day): readonly (typeof DAY_REASONS)[number][] {
  return says === NO_SIGN ? DAY_REASONS.filter(({ id }) => id !== 'empty') : DAY_REASONS;
}

/** The nth day, from 1 on: always the same one. */
export function dayOf(n: number): Day {
  const random = seededRandom(n);
  const depth_m = pick(random, DEPTHS_M);
  if (random() < MAP_PART) {
    const { degF: drawn, ...told } = pick(random, MAP_DAYS);
    const degF = pick(random, drawn);
    return { degF, depth_m, says: NO_SIGN, why: seasonRowAt(degF).why, ...told };
  }
  return { degF: pick(random, SIGN_DAYS_F), depth_m, ...pick(random, SIGNS) };
}

/** A swim goes so far that one begun with the others would end under the boat, m. */
const SWUM_FROM_M = ft(95);

/** The retrieve in this water for about fifteen seconds. */
function dayRun({ degF, depth_m }: Day, retrieve: DayRetrieve): ShownRun {
  const slack_m = retrieve === 'shake' ? 1.2 : 0.03;
  const water = waterWith({
    depth_m,
    temperature_C: fahrenheitToCelsius(degF),
    start: { bait_x_m: ft(40), slack_m }
  });
  switch (retrieve) {
    case 'drag':
      return lowRun(water, inTurn(sweep(60, 70, 2.5), pause(9), sweep(70, 80, 2.5)), 1);
    case 'drag-hop':
      return uprightRun(
        water,
        20,
        inTurn(lift(20, 32, 3), pause(4), lift(32, 43, 0.25), lift(43, 34, 0.6), pause(6)),
        1
      );
    case 'strokes':
      return uprightRun(
        water,
        15,
        inTurn(...times(3, lift(15, 75, 0.45), pause(0.1), lift(75, 15, 1.8), reel(1.2, 2.3))),
        1
      );
    case 'shake':
      return uprightRun(
        water,
        30,
        inTurn(...times(5, lift(30, 34, 0.2), lift(34, 30, 0.2), pause(0.3)), pause(10)),
        1
      );
    case 'swim':
      return uprightRun(
        { ...water, start: { ...water.start, bait_x_m: SWUM_FROM_M } },
        20,
        swum(7.8, 0.7),
        0
      );
  }
}

export const DAY_RETRIEVES = ['drag', 'drag-hop', 'strokes', 'shake', 'swim'] as const;

/** Every retrieve in this day's water, as the model takes it; in the order of `DAY_RETRIEVES`. */
export function dayScenarios(day: Day): ScenarioInput[] {
  return DAY_RETRIEVES.map((retrieve) => {
    const { setup, move, hold_s } = dayRun(day, retrieve);
    return { ...setup, move, hold_s };
  });
}

/** What a retrieve came to in fifteen seconds. */
export interface DayFigures {
  travel_m: number;
  peak_height_m: number;
}

/** Figures of the day's scenarios, in their order, by retrieve. Throws RangeError where one could not be run. */
export function figuresByRetrieve(
  made: readonly ({ figures: DayFigures } | null)[]
): Record<DayRetrieve, DayFigures> {
  const pairs = DAY_RETRIEVES.map((retrieve, i) => {
    const figures = made[i]?.figures;
    if (!figures) throw new RangeError(`the model cannot run ${retrieve} here`);
    return [retrieve, figures] as const;
  });
  return Object.fromEntries(pairs) as Record<DayRetrieve, DayFigures>;
}

/** The day, in words with quantities in braces. */
export function dayWords({ degF, depth_m, says }: Day): string {
  const degC = Math.round(fahrenheitToCelsius(degF));
  return `${saidOut(depth_m)} of water, {${degF} °F|${degC} °C} at the surface. ${says}`;
}
