import { isOffBottom, type Result } from '../../model';

export interface Measure {
  quantity: 'length' | 'time' | 'share' | 'pull';
  /** Less than this nobody tells apart on the water, whatever the model says. */
  least: number;
  /** Moves that are ranked differ by more: half a foot of lift, a hand of travel, two seconds of the count. */
  apart: number;
  /** And by more than this part of the greater one, where another skirt moves both by a good part of themselves. */
  apartShare?: number;
}

/** What items ask about, SI. `least` is an inch, a beat of the count, a tenth of the way. */
export const MEASURES = {
  travel_m: { quantity: 'length', least: 0.025, apart: 0.076 },
  peak_height_m: { quantity: 'length', least: 0.025, apart: 0.152 },
  contact: { quantity: 'share', least: 0.1, apart: 0.1 },
  fall_s: { quantity: 'time', least: 0.5, apart: 2, apartShare: 0.15 },
  airborne_s: { quantity: 'time', least: 0.3, apart: 0.5 },
  pull_N: { quantity: 'pull', least: 0.05, apart: 0.05 }
} as const satisfies Record<string, Measure>;

export type MeasureName = keyof typeof MEASURES;
export const MEASURE_NAMES = Object.keys(MEASURES) as MeasureName[];

/** A bait that came less far than this hardly moved, m: half a foot. */
const HARDLY_M = 0.15;

/**
 * Gravel lifts a jig less than this, m, and chunk rock more: the one is 4–12 mm high, the other 40–140,
 * and a jig goes up part of a rock. Boulders are long: a jig slides up and down them without a gap.
 */
const PEBBLE_M = 0.02;
const ROCK_M = 0.025;
const SLID_M = 0.01;
/** The pull that starts a jig beside the pull that keeps it going: mud holds it at twice. */
const STUCK = 1.6;
/** A jig that has come so far is under way, m. */
const UNDER_WAY_M = 0.05;

/** What a run can be seen to have done. No two of those set against each other hold of one run. */
export const SIGNS = {
  knocks: ({ events }) => count(events, 'stone') >= 3 && count(events, 'stem slips') === 0,
  springs: ({ events }) => lateSlips(events) >= 2 && count(events, 'stone') === 0,
  smooth: ({ events }) => isSmooth(events),
  'fine ticks': ({ events, peak_height_m }) =>
    count(events, 'stone') >= 10 && peak_height_m < PEBBLE_M && count(events, 'stem slips') === 0,
  // Shells stand no higher than 24 mm, closer than rock does.
  crunches: ({ events, peak_height_m }) =>
    count(events, 'stone') >= 10 && peak_height_m < ROCK_M && count(events, 'stem slips') === 0,
  'long loads': ({ events, peak_height_m }) =>
    count(events, 'stone') >= 1 &&
    count(events, 'stone') <= 6 &&
    peak_height_m < SLID_M &&
    lateSlips(events) === 0,
  'sucks at the start': (result) => isSmooth(result.events) && startPull(result) > STUCK,
  lifted: ({ peak_height_m }) => isOffBottom(peak_height_m),
  'stayed down': ({ peak_height_m, travel_m }) =>
    !isOffBottom(peak_height_m) && travel_m > HARDLY_M,
  'hardly moved': ({ peak_height_m, travel_m }) =>
    !isOffBottom(peak_height_m) && travel_m <= HARDLY_M,
  'one hop': ({ hops }) => hops.length === 1,
  'two hops': ({ hops }) => hops.length === 2,
  'three hops': ({ hops }) => hops.length === 3,
  bite: ({ events }) => count(events, 'bite') > 0,
  freed: ({ events }) => count(events, 'freed') > 0,
  'set deeper': ({ events }) => count(events, 'set deeper') > 0
} as const satisfies Record<string, (result: Result) => boolean>;

export type SignName = keyof typeof SIGNS;
export const SIGN_NAMES = Object.keys(SIGNS) as SignName[];

function isSmooth(events: Result['events']): boolean {
  return count(events, 'stone') === 0 && lateSlips(events) === 0;
}

/** Hardest pull until the jig is under way, as a multiple of the middle one while it goes on. */
function startPull({ trace: { bait_x_m, tip_tension_N } }: Result): number {
  const last = bait_x_m.length - 1;
  const isFrom = (from: number, i: number) => Math.abs(bait_x_m[i] - from) >= UNDER_WAY_M;
  let begun = 0;
  while (begun < last && !isFrom(bait_x_m[0], begun)) begun++;
  let ended = last;
  while (ended > begun && !isFrom(bait_x_m[last], ended)) ended--;
  const steady = [...tip_tension_N.slice(begun, ended + 1)].sort((a, b) => a - b);
  return Math.max(...tip_tension_N.slice(0, begun + 1)) / steady[Math.floor(steady.length / 2)];
}

function count(events: Result['events'], kind: string): number {
  return events.filter((event) => event.kind === kind).length;
}

/** Stems that let go while the bait was drawn along, and not as it was laid down. */
function lateSlips(events: Result['events']): number {
  return events.filter(({ kind, t_s }) => kind === 'stem slips' && t_s > 0.1).length;
}
