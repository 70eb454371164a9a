import type { FigureScale, Units } from '$lib/scoring';
import { figureAxis, type FigureAxis } from './figure-axis';

/** What a try reached, in the unit of what was asked. */
export interface Reached {
  id: string;
  value: number;
  isRight: boolean;
}

/** Where a room's tries lie beside what was asked, in a drawing so many units wide. */
export interface Spread extends Omit<FigureAxis, 'at'> {
  width: number;
  marks: { id: string; x: number; row: number; isRight: boolean }[];
  rows: number;
  middle: Middle | null;
}

/** As many tries lie on one side of it as on the other: a place, or all between two heaps. */
export interface Middle {
  from: number;
  to: number;
  isSplit: boolean;
  /** Where its name has room. */
  name: { x: number; anchor: 'start' | 'middle' | 'end' };
}

const WIDTH = 600;
const EDGE = 24;
/** Marks nearer than this would cover each other and are put one above the other. */
const MARK = 12;
/** Ticks that have room for their figures. */
const MOST_TICKS = 7;
/** What the name of the middle takes. */
const NAME = 130;

/** Lays the tries out as heaps on an axis of the task's figure. */
export function spreadOf(tries: readonly Reached[], scale: FigureScale, units: Units): Spread {
  const values = tries.map(({ value }) => value);
  const reach = [EDGE, WIDTH - EDGE] as const;
  const { at, band, ticks } = figureAxis(scale, values, units, { reach, most: MOST_TICKS });
  const marks = heaped(tries.map(({ id, value, isRight }) => ({ id, isRight, x: at(value) })));
  return {
    width: WIDTH,
    marks,
    rows: Math.max(1, ...marks.map(({ row }) => row + 1)),
    band,
    middle: middleOf(values.map(at), band),
    ticks
  };
}

/** No middle of fewer: the marks say all. */
const FEWEST = 3;
/** Heaps further apart than this are two, where no range is asked. */
const APART = WIDTH / 4;

/** A mean may lie where nobody's try does; this lies on a try, or says that the room is split. */
function middleOf(xs: readonly number[], band: FigureAxis['band']): Middle | null {
  if (xs.length < FEWEST) return null;
  const sorted = [...xs].sort((a, b) => a - b);
  const last = sorted.length - 1;
  const [low, high] = [sorted[Math.floor(last / 2)], sorted[Math.ceil(last / 2)]];
  const x = (low + high) / 2;
  if (high - low > (band?.width ?? APART)) {
    const within = Math.min(Math.max(x, NAME / 2), WIDTH - NAME / 2);
    return { from: low, to: high, isSplit: true, name: { x: within, anchor: 'middle' } };
  }
  // Away from what is asked, unless it would leave the drawing.
  const asked = band ? band.x + band.width / 2 : 0;
  const isRight = x < NAME || (x >= asked && x <= WIDTH - NAME);
  const name = { x: x + (isRight ? 5 : -5), anchor: isRight ? 'start' : 'end' } as const;
  return { from: x, to: x, isSplit: false, name };
}

function heaped<Point extends { x: number }>(points: Point[]): (Point & { row: number })[] {
  const ends: number[] = [];
  return [...points]
    .sort((a, b) => a.x - b.x)
    .map((point) => {
      const free = ends.findIndex((end) => end + MARK <= point.x);
      const row = free === -1 ? ends.length : free;
      ends[row] = point.x;
      return { ...point, row };
    });
}
