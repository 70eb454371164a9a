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

export interface Mark {
  value: number;
  label: string;
}

/** Round values between two, labels at least so many units of the drawing apart at a scale in units. */
export type Ruler = (from: number, to: number, scale: number, apart: number) => Mark[];

/** Where a room's tries lie beside the target, in a drawing so many units wide. */
export interface Spread {
  width: number;
  marks: { id: string; x: number; row: number }[];
  rows: number;
  band: { x: number; width: number };
  target: number;
  /** The middle of the tries, and on which side of it there is room for its name. */
  mean: { x: number; side: 'start' | 'end' } | null;
  ticks: { x: number; label: string }[];
}

const WIDTH = 600;
const EDGE = 22;
/** Marks nearer than this would cover each other and are put one above the other. */
const MARK = 12;
/** Figures nearer than this run together. */
const FIGURE = 64;
/** What the name of the mean takes. */
const NAME = 130;

/**
 * Lays the tries out as heaps on a ruler that begins at nothing and has the target well inside. What
 * was asked has a tick of its own, and round values close to it give way.
 */
export function spreadOf(
  tries: readonly Reached[],
  { target, band }: Asked,
  asked: string,
  ruler: Ruler
): Spread {
  const values = tries.map(({ value }) => value);
  const from = Math.min(0, ...values);
  const to = Math.max(target + 2 * band, ...values);
  const scale = (WIDTH - 2 * EDGE) / (to - from);
  const place = (value: number) => EDGE + (value - from) * scale;
  const marks = heaped(tries.map(({ id, value }) => ({ id, x: place(value) })));
  const round = ruler(from, to, scale, FIGURE).map(({ value, label }) => ({
    x: place(value),
    label
  }));
  const free = round.filter(({ x }) => Math.abs(x - place(target)) >= FIGURE);
  return {
    width: WIDTH,
    marks,
    rows: Math.max(1, ...marks.map(({ row }) => row + 1)),
    band: { x: place(target - band), width: 2 * band * scale },
    target: place(target),
    mean: values.length ? middle(place(mean(values)), place(target)) : null,
    ticks: [...free, { x: place(target), label: asked }].sort((a, b) => a.x - b.x)
  };
}

const mean = (values: readonly number[]) =>
  values.reduce((total, value) => total + value, 0) / values.length;

/** Its name stands away from the target, unless it would leave the drawing. */
function middle(x: number, target: number): Spread['mean'] {
  const isRight = x < NAME || (x >= target && x <= WIDTH - NAME);
  return { x, side: isRight ? 'start' : 'end' };
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
