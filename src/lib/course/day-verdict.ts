import { isOffBottom } from '../model';
import { formatDepth, formatLength, type Units } from '../scoring';
import {
  DAY_CHOICES,
  DAY_REASONS,
  type Day,
  type DayChoice,
  type DayFigures,
  type DayReason,
  type DayRetrieve
} from './day-choice';

/** What a run of the model shows, or does not. */
export type JigReason = Exclude<DayReason, 'empty'>;

/** Farther is no longer one spot, m: a yard, two short drags. */
const ONE_SPOT_M = 0.9;

/** Whether the model bears out what a reason says of the jig. */
export function bearsOut(reason: JigReason, { travel_m, peak_height_m }: DayFigures): boolean {
  switch (reason) {
    case 'near':
      return travel_m <= ONE_SPOT_M;
    case 'down':
      return !isOffBottom(peak_height_m);
    case 'rises':
      return isOffBottom(peak_height_m);
    case 'covers':
      return travel_m > ONE_SPOT_M;
  }
}

/**
 * What is said to a choice and its reason: what most guides do and why, and whether the reason defends the
 * choice. How far and how high each retrieve comes is in the table.
 */
export function dayVerdict(
  day: Day,
  choice: DayChoice,
  reason: DayReason,
  figures: Readonly<Record<DayRetrieve, DayFigures>>,
  units: Units
): string[] {
  const best = DAY_CHOICES.find(({ id }) => id === day.best)?.says ?? '';
  return [
    choice === day.best ? `Right. ${day.why}` : `Most guides: ${best.toLowerCase()}. ${day.why}`,
    reasonWords(day, choice, reason, figures, units)
  ];
}

/** More is told in whole feet, m: no hand has a stroke to the inch. */
const ROUND_FROM_M = 0.9144;

/** How far or how high a retrieve brings a jig, as an eye has it. */
export function dayLength(m: number, units: Units): string {
  return m < ROUND_FROM_M ? formatLength(Math.max(0, m), units) : formatDepth(m, units);
}

/** What the model shows against a reason that does not hold. */
function againstWords(
  reason: JigReason,
  { travel_m, peak_height_m }: DayFigures,
  units: Units
): string {
  switch (reason) {
    case 'near':
    case 'covers':
      return `it comes ${dayLength(travel_m, units)} in 15 seconds`;
    case 'down':
      return `it gets ${dayLength(peak_height_m, units)} off bottom`;
    case 'rises':
      return 'it never leaves bottom';
  }
}

/** Whether a try by hand did what was said for it; empty for a reason that is not of the jig. */
export function handWords(reason: DayReason, made: DayFigures, units: Units): string {
  if (reason === 'empty') return '';
  const said = DAY_REASONS.find(({ id }) => id === reason)?.says ?? '';
  const came = formatLength(Math.max(0, made.travel_m), units);
  const up = isOffBottom(made.peak_height_m)
    ? `got ${formatLength(made.peak_height_m, units)} off bottom`
    : 'never left bottom';
  const held = bearsOut(reason, made) ? 'It did' : 'It didn’t do';
  return `You said: ${said}. Yours came ${came} and ${up}. ${held} what you said.`;
}

function reasonWords(
  day: Day,
  choice: DayChoice,
  reason: DayReason,
  figures: Readonly<Record<DayRetrieve, DayFigures>>,
  units: Units
): string {
  if (reason === 'empty') return emptyWords(choice, day.counts.includes(reason));
  return choice === 'move'
    ? moveWords(day, reason)
    : jigWords(day, choice, reason, figures[choice], units);
}

const HOLDS = 'Your reason holds, and it’s what counts today.';

function moveWords({ best }: Day, reason: JigReason): string {
  if (reason !== 'covers') return 'That’s a reason for a retrieve, not for a move.';
  return best === 'move' ? HOLDS : 'It does, but nothing says to leave yet.';
}

/** Of the jig it is true, and of the day's fish it is not what counts. */
const NOT_WHY: Readonly<Record<JigReason, string>> = {
  near: 'True, but active fish come to it.',
  down: 'True, but staying down isn’t what gets these to bite.',
  rises: 'True, but these fish won’t come up for it.',
  covers: 'True, but covering water isn’t what gets these to bite.'
};

function jigWords(
  day: Day,
  choice: DayRetrieve,
  reason: JigReason,
  did: DayFigures,
  units: Units
): string {
  const { best, counts, highest_m = Infinity, whenDown = NOT_WHY.down } = day;
  if (!bearsOut(reason, did))
    return `Your reason doesn’t hold: ${againstWords(reason, did, units)}.`;
  if (best === 'move') return 'True, but it doesn’t put fish in an empty spot.';
  if (reason === 'rises' && did.peak_height_m > highest_m)
    return 'It does, but too high for cool fish: a short hop is enough.';
  if (!counts.includes(reason)) return reason === 'down' ? whenDown : NOT_WHY[reason];
  return choice === best ? HOLDS : 'Your reason holds and counts today: you can defend that.';
}

function emptyWords(choice: DayChoice, counts: boolean): string {
  if (!counts) return 'Nothing here says so.';
  return choice === 'move' ? HOLDS : 'Then no retrieve helps. That’s the reason to move.';
}
