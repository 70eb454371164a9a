import { ft } from './items/draw';
import { fahrenheitToCelsius, isOffBottom, seededRandom, type ScenarioInput } from '../model';
import { formatLength, type Units } from '../scoring';
import { pick } from './items/draw';
import { saidOut } from './items/said';
import { waterWith } from './lessons/fathomley';
import { lowRun, uprightRun } from './lessons/runs';
import type { ShownRun } from './lesson';
import { inTurn, lift, pause, reel, sweep, times } from './retrieves/moves';
import { seasonRowAt } from './season-map';

/** What can be done with a day; all but moving is a retrieve that the model runs. */
export const DAY_CHOICES = [
  { id: 'move', says: 'Move first, same retrieve' },
  { id: 'drag', says: 'Short, slow drags, long waits' },
  { id: 'drag-hop', says: 'Drags with a short hop' },
  { id: 'strokes', says: 'Strokes, short waits' },
  { id: 'shake', says: 'Shake in place, longer waits' }
] as const;
export type DayChoice = (typeof DAY_CHOICES)[number]['id'];
export type DayRetrieve = Exclude<DayChoice, 'move'>;

/** Why one would: each is the reason for one choice. The model can look at what it says of the jig. */
export const DAY_REASONS = [
  { id: 'move', says: 'No retrieve catches what isn’t there' },
  { id: 'drag', says: 'It stays down, right in front of them' },
  { id: 'drag-hop', says: 'It moves a little, and leaves bottom once' },
  { id: 'strokes', says: 'It goes far up and falls' },
  { id: 'shake', says: 'It trembles and hardly leaves its place' }
] as const satisfies readonly { id: DayChoice; says: string }[];

/** What fish show. Common practice, no source: what is seen of the fish comes before the season. */
const SIGNS: readonly { says: string; best: DayChoice; why: string }[] = [
  {
    says: 'Twenty good casts, no bites, and no fish on the graph.',
    best: 'move',
    why: 'The spot is empty, so move first.'
  },
  {
    says: 'Fish follow it, turn away, and won’t eat.',
    best: 'shake',
    why: 'Fish that look and won’t eat want it close to still.'
  },
  {
    says: 'Fish on bottom, and not one follows.',
    best: 'drag',
    why: 'Fish that won’t move need it kept in front of them.'
  },
  {
    says: 'A school chasing bait, well up off bottom.',
    best: 'strokes',
    why: 'Fish on the chase go for what rises and falls.'
  }
];
const NO_SIGN = 'Your first cast of the day.';
/** Days on which only the map tells, among all. */
const MAP_PART = 0.5;
/** Each well inside a row of the map, °F. */
const MAP_DAYS = [
  { degF: [40, 42, 44, 46], best: 'drag' },
  { degF: [53, 55, 57], best: 'drag-hop' },
  { degF: [78, 80, 82], best: 'strokes' }
] as const;
/** Where any mood may be met, °F: neither the coldest nor the warmest. */
const SIGN_DAYS_F = [55, 62, 66, 70];
const DEPTHS_M = [10, 15, 20].map(ft);

export interface Day {
  degF: number;
  depth_m: number;
  says: string;
  best: DayChoice;
  why: string;
}

/** The nth day, from 1 on: always the same one. */
export function dayOf(n: number): Day {
  const random = seededRandom(n);
  const depth_m = pick(random, DEPTHS_M);
  if (random() < MAP_PART) {
    const { degF: drawn, best } = pick<(typeof MAP_DAYS)[number]>(random, MAP_DAYS);
    const degF = pick<number>(random, drawn);
    return { degF, depth_m, says: NO_SIGN, best, why: seasonRowAt(degF).why };
  }
  return { degF: pick(random, SIGN_DAYS_F), depth_m, ...pick(random, SIGNS) };
}

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
  }
}

export const DAY_RETRIEVES = ['drag', 'drag-hop', 'strokes', 'shake'] as const;

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

/** Less than this stays in its place, and more than this goes far up, m: six inches and a foot and a half. */
const IN_PLACE_M = 0.15;
const FAR_UP_M = 0.45;
/** Two short drags; more is no longer in front of a fish, m: a yard. */
const IN_FRONT_M = 0.9;

/** Whether the model bears out what a reason says of the jig. */
export function bearsOut(reason: DayRetrieve, { travel_m, peak_height_m }: DayFigures): boolean {
  switch (reason) {
    case 'drag':
      return !isOffBottom(peak_height_m) && travel_m > IN_PLACE_M && travel_m <= IN_FRONT_M;
    case 'drag-hop':
      return isOffBottom(peak_height_m) && peak_height_m < FAR_UP_M && travel_m > IN_PLACE_M;
    case 'strokes':
      return peak_height_m >= FAR_UP_M;
    case 'shake':
      return travel_m <= IN_PLACE_M;
  }
}

/** What is said to a choice and its reason: the map, the model, and whether the two go together. */
export function dayVerdict(
  day: Day,
  choice: DayChoice,
  reason: DayChoice,
  figures: Readonly<Record<DayRetrieve, DayFigures>>,
  units: Units
): string[] {
  const isBest = choice === day.best;
  const best = DAY_CHOICES.find(({ id }) => id === day.best)?.says ?? '';
  return [
    isBest ? `Right. ${day.why}` : `${best}: ${day.why}`,
    ...modelWords(choice, reason, figures, units),
    ...(isBest ? [] : ['Guides differ, and so do lakes: it’s where to start, not a rule.'])
  ];
}

function modelWords(
  choice: DayChoice,
  reason: DayChoice,
  figures: Readonly<Record<DayRetrieve, DayFigures>>,
  units: Units
): string[] {
  if (choice === 'move')
    return reason === 'move' ? [] : ['That’s a reason for a retrieve, not for a move.'];
  if (reason === 'move') return ['That’s the reason to move, not to stay with a retrieve.'];
  const { travel_m, peak_height_m } = figures[choice];
  const up = isOffBottom(peak_height_m)
    ? `gets ${formatLength(peak_height_m, units)} off bottom`
    : 'never leaves bottom';
  const did = `In the model it ${up} and comes ${formatLength(Math.max(0, travel_m), units)} in 15 seconds.`;
  return [
    did,
    bearsOut(reason, figures[choice])
      ? 'Your reason holds: that’s what the jig does.'
      : 'Your reason doesn’t hold: look at what the jig does.'
  ];
}
