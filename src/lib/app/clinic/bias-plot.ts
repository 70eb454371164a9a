import {
  askedRangeText,
  figureSide,
  formatFigure,
  type FigureUnit,
  type Units
} from '$lib/scoring';
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
  const few = rounds.some(isFew) ? 'A ring is one try.' : '';
  const many = rounds.every(isFew)
    ? ''
    : 'The mark is the average of all tries; about two of three lie on the line.';
  return [many, few].filter(Boolean).join(' ');
}

/** A drawing so many units wide, a row of it so high, and where a row's axis begins and ends and lies. */
export const BIAS_LAYOUTS = {
  /** Names beside the axes. */
  wide: { width: 900, row: 92, reach: [340, 870], ground: 54, most: 5 },
  /** Names above them: as wide as a phone, so that figures keep their size. */
  narrow: { width: 400, row: 136, reach: [14, 370], ground: 96, most: 4 }
} as const;
export type BiasLayout = (typeof BIAS_LAYOUTS)[keyof typeof BIAS_LAYOUTS];

/** Each round on an axis of its own task's figure; rounds of one task have the same axis. */
export function biasRows(
  rounds: readonly RoomHand[],
  units: Units,
  { reach, most }: Pick<BiasLayout, 'reach' | 'most'> = BIAS_LAYOUTS.wide
): BiasRow[] {
  return rounds.map((round) => {
    const { scale, mean } = round;
    const alike = rounds.filter((one) => one.title === round.title);
    const values = alike.flatMap((one) => (isFew(one) ? one.few : endsOf(one)));
    const { at, band, ticks } = figureAxis(scale, values, units, { reach, most });
    const [from, to] = endsOf(round).map(at);
    const asked = askedRangeText(scale, units);
    return {
      title: roundTitle(round),
      of: asked ? `${scale.name}, asked ${asked}` : scale.name,
      said: meanText(round, units),
      band,
      ticks,
      marks: isFew(round) ? round.few.map(at) : [at(mean)],
      spread: isFew(round) ? null : { from, to }
    };
  });
}

/** What no try goes past: below nothing, or above all there is. */
const BOUNDS: Partial<Record<FigureUnit, readonly [number, number]>> = {
  'm/s': [0, Infinity],
  count: [0, Infinity],
  share: [0, 1],
  marks: [0, 100]
};

/** Where about two of three tries lie. */
function endsOf({ scale, mean, spread }: RoomHand): [number, number] {
  const [least, most] = BOUNDS[scale.unit] ?? [-Infinity, Infinity];
  return [Math.max(least, mean - spread), Math.min(most, mean + spread)];
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
