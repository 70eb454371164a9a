import { scaleLinear } from 'd3-scale';

/** What a try reached, in the unit of what was asked. */
export interface Reached {
  id: string;
  value: number;
}

/** What was asked: the target and how far off it is still right. */
export interface Asked {
  target: number;
  band: number;
}

/** Where a room's tries lie beside the target, in a drawing so many units wide. */
export interface Spread {
  width: number;
  marks: { id: string; x: number; row: number }[];
  rows: number;
  band: { x: number; width: number };
  target: number;
  mean: number | null;
  ticks: { x: number; value: number }[];
}

const WIDTH = 600;
const EDGE = 16;
/** Marks nearer than this would cover each other and are put one above the other. */
const MARK = 12;

/** Lays the tries out as heaps on a ruler that begins at nothing and has the target well inside. */
export function spreadOf(tries: readonly Reached[], { target, band }: Asked): Spread {
  const values = tries.map(({ value }) => value);
  const least = Math.min(0, ...values);
  const most = Math.max(target + 2 * band, ...values);
  const scale = scaleLinear([least, most], [EDGE, WIDTH - EDGE]).nice();
  const marks = heaped(tries.map(({ id, value }) => ({ id, x: scale(value) })));
  const sum = values.reduce((total, value) => total + value, 0);
  return {
    width: WIDTH,
    marks,
    rows: Math.max(1, ...marks.map(({ row }) => row + 1)),
    band: { x: scale(target - band), width: scale(target + band) - scale(target - band) },
    target: scale(target),
    mean: values.length ? scale(sum / values.length) : null,
    ticks: scale.ticks(5).map((value) => ({ x: scale(value), value }))
  };
}

function heaped(points: { id: string; x: number }[]) {
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
