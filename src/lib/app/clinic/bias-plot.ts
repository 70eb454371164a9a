import { askedRangeText, formatFigure, figureSide, type Units } from '$lib/scoring';
import type { RoomHand } from '$lib/wire';
import { figureAxis, type FigureAxis } from './figure-axis';

/** One round of the room's hand in a drawing: the mean, and as far again as the spread on both sides. */
export interface BiasRow extends Omit<FigureAxis, 'at'> {
  title: string;
  /** "How far the jig went, asked 10 in to 1 ft 2 in" */
  of: string;
  said: string;
  /** The average, or each try where they are too few for one. */
  marks: number[];
  /** Where the spread begins and ends; null where the tries are too few. */
  spread: { from: number; to: number } | null;
}

/** What mark and whisker mean: the spread is a standard deviation of the tries about their middle. */
export function handKey(rounds: readonly RoomHand[]): string {
  const few = rounds.some(isFew) ? 'A ring is one try: too few for an average.' : '';
  const many = rounds.every(isFew)
    ? ''
    : 'The mark is the average of all tries; about two of three lie on the line.';
  return [many, few].filter(Boolean).join(' ');
}

/** A row's axis begins and ends here. */
export const BIAS_WIDTH = 900;
const REACH = [340, 870] as const;
const MOST_TICKS = 5;

/** Each round on an axis of its own task's figure; rounds of one task have the same axis. */
export function biasRows(rounds: readonly RoomHand[], units: Units): BiasRow[] {
  return rounds.map((round) => {
    const { scale, mean, spread } = round;
    const alike = rounds.filter((one) => one.title === round.title);
    const ends = alike.flatMap((one) =>
      isFew(one) ? one.few : [one.mean - one.spread, one.mean + one.spread]
    );
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
      marks: isFew(round) ? round.few.map(at) : [at(mean)],
      spread: isFew(round) ? null : { from: at(mean - spread), to: at(mean + spread) }
    };
  });
}

/** An average of so few says nothing: each try is told. */
export const isFew = ({ few }: Pick<RoomHand, 'few'>): boolean => few.length > 0;

/** "1 ft 6 in, too far"; of few tries each: "5 in, 1 ft 6 in" */
export function meanText(round: RoomHand, units: Units): string {
  const { scale, mean, few } = round;
  if (isFew(round)) return few.map((value) => formatFigure(scale, value, units)).join(', ');
  const side = figureSide(scale, mean);
  const said = side === 0 ? (scale.asked ? 'as asked' : '') : side < 0 ? scale.less : scale.more;
  return [formatFigure(scale, mean, units), said].filter(Boolean).join(', ');
}

/** The challenge, and which time it was tried. */
export function roundTitle({ title, ballot, again }: RoomHand): string {
  const once = again ? `${title}, once more` : title;
  return ballot > 1 ? `${once} (${ballot})` : once;
}
