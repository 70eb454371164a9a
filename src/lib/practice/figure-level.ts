import { figureSide, type FigureScale, type TaskFigure } from '../scoring';
import type { FigureLevel, TryReply } from '../wire';
import { RULER_LEAST, RULER_TRIES, SETTLED_WITHIN } from './design';
import { levelNow } from './level-now';

/** So few that miss on both sides are no hand yet: one of them makes the average. */
const CLEAR_TRIES = 6;

/**
 * How a hand stands at a task, in the unit of its figure: the same level, of the same last tries,
 * as a hand's ruler has, which for one distance says the same in parts of it. Null for too few tries.
 * @param all what each try reached, oldest first
 */
export function figureLevel(
  figure: Pick<FigureScale, 'asked'>,
  all: readonly number[]
): FigureLevel | null {
  const values = all.slice(-RULER_TRIES);
  if (values.length < RULER_LEAST) return null;
  const { value, band, sd } = levelNow(values, SETTLED_WITHIN * sizeOf(figure, values));
  const sides = values.map((one) => figureSide(figure, one));
  const [less, more] = [-1, 1].map((side) => sides.filter((one) => one === side).length);
  const level = { value, band, sd, tries: values.length, less, more };
  const off = offOf(figure, value);
  const reach = reachOf(figure);
  const miss = reach === null ? 0 : Math.max(Math.abs(off), sd) / reach;
  return { ...level, off, miss, advice: adviceFor(figure, { ...level, off }) };
}

/** What a part of a figure is a part of: the middle of what was asked, or its open end; else what is usual. */
function sizeOf({ asked }: Pick<FigureScale, 'asked'>, values: readonly number[]): number {
  if (asked) return Math.abs(asked[1] === null ? asked[0] : (asked[0] + asked[1]) / 2);
  return values.reduce((sum, value) => sum + Math.abs(value), 0) / values.length;
}

/** How far a value is from the middle of what was asked, or from its open range; 0 where none was. */
function offOf({ asked }: Pick<FigureScale, 'asked'>, value: number): number {
  if (!asked) return 0;
  const [low, high] = asked;
  return high === null ? Math.min(0, value - low) : value - (low + high) / 2;
}

/** Half of the range asked; of an open one half of its end. Null where none was asked. */
function reachOf({ asked }: Pick<FigureScale, 'asked'>): number | null {
  if (!asked) return null;
  const [low, high] = asked;
  return high === null ? low / 2 : Math.max((high - low) / 2, Number.EPSILON);
}

type Found = Pick<FigureLevel, 'value' | 'sd' | 'tries' | 'less' | 'more' | 'off'>;

/** What to say to this hand next: which way it misses first, where that is the larger part of the error. */
function adviceFor(
  figure: Pick<FigureScale, 'asked'>,
  { value, sd, tries, less, more, off }: Found
): FigureLevel['advice'] {
  const reach = reachOf(figure);
  if (reach === null) return 'steady';
  if (tries < CLEAR_TRIES && less > 0 && more > 0) return 'unclear';
  const side = figureSide(figure, value);
  if (side !== 0 && Math.abs(off) >= sd) return side > 0 ? 'lower' : 'raise';
  return side !== 0 || sd > reach ? 'steady' : 'harder';
}

type Replied = Pick<TryReply, 'figure' | 'travel_m' | 'marks'>;

/** What a graded try reached of its task's figure; a reply of before says it of a distance alone. */
export function figureOfReply({ goal }: Pick<TaskFigure, 'goal'>, reply: Replied): number | null {
  if (reply.figure !== undefined) return reply.figure;
  if (goal === null) return reply.marks;
  return goal.kind === 'travel' ? reply.travel_m : null;
}
