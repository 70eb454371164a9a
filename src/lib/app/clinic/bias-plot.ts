import { askedRangeText, formatFigure, figureSide, type Units } from '$lib/scoring';
import type { RoomHand } from '$lib/wire';
import { figureAxis, type FigureAxis } from './figure-axis';

/** One round of the room's hand in a drawing: the mean, and as far again as the spread on both sides. */
export interface BiasRow extends Omit<FigureAxis, 'at'> {
  title: string;
  /** "How far the jig went, asked 10 in to 1 ft 2 in" */
  of: string;
  said: string;
  x: number;
  from: number;
  to: number;
}

/** What mark and whisker mean: the spread is a standard deviation of the tries about their middle. */
export const HAND_KEY = 'The mark is the average of all tries; about two of three lie on the line.';

/** A row's axis begins and ends here. */
export const BIAS_WIDTH = 900;
const REACH = [340, 870] as const;
const MOST_TICKS = 5;

/** Each round on an axis of its own task's figure; rounds of one task have the same axis. */
export function biasRows(rounds: readonly RoomHand[], units: Units): BiasRow[] {
  return rounds.map((round) => {
    const { scale, mean, spread } = round;
    const alike = rounds.filter((one) => one.title === round.title);
    const ends = alike.flatMap((one) => [one.mean - one.spread, one.mean + one.spread]);
    const values = ends.map((end) => (scale.unit === 'm/s' ? Math.max(0, end) : end));
    const { at, band, ticks } = figureAxis(scale, values, units, {
      reach: REACH,
      most: MOST_TICKS
    });
    const asked = askedRangeText(scale, units);
    return {
      title: roundTitle(round),
      of: asked ? `${scale.name}, asked ${asked}` : scale.name,
      said: meanText(round, units),
      band,
      ticks,
      x: at(mean),
      from: at(mean - spread),
      to: at(mean + spread)
    };
  });
}

/** "1 ft 6 in, too far" */
export function meanText({ scale, mean }: RoomHand, units: Units): string {
  const side = figureSide(scale, mean);
  const said = side === 0 ? (scale.asked ? 'as asked' : '') : side < 0 ? scale.less : scale.more;
  return [formatFigure(scale, mean, units), said].filter(Boolean).join(', ');
}

/** The challenge, and which time it was tried. */
export function roundTitle({ title, ballot, again }: RoomHand): string {
  const once = again ? `${title}, once more` : title;
  return ballot > 1 ? `${once} (${ballot})` : once;
}
