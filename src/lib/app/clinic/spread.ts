/** What a try reached, in the unit of what was asked. */
export interface Reached {
  id: string;
  value: number;
}

/** What was asked: the target and how far off it is still right. */
export interface AskedBand {
  target: number;
  band: number;
}

export interface SpreadTick {
  value: number;
  label: string;
}

/** Round values between two, labels at least so many units of the drawing apart at a scale in units. */
export type TickMaker = (from: number, to: number, scale: number, apart: number) => SpreadTick[];

/** Where a room's tries lie beside the target, in a drawing so many units wide. */
export interface Spread {
  width: number;
  marks: { id: string; x: number; row: number }[];
  rows: number;
  band: { x: number; width: number };
  target: number;
  middle: Middle | null;
  ticks: { x: number; label: string }[];
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
const EDGE = 22;
/** Marks nearer than this would cover each other and are put one above the other. */
const MARK = 12;
/** Figures nearer than this run together. */
const FIGURE = 64;
/** What the name of the middle takes. */
const NAME = 130;

/**
 * Lays the tries out as heaps on a ruler that begins at nothing and has the target well inside. What
 * was asked has a tick of its own, and round values close to it give way.
 */
export function spreadOf(
  tries: readonly Reached[],
  { target, band }: AskedBand,
  asked: string,
  ruler: TickMaker
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
    middle: middleOf(values, band, place, place(target)),
    ticks: [...free, { x: place(target), label: asked }].sort((a, b) => a.x - b.x)
  };
}

/** No middle of fewer: the marks say all. */
const FEWEST = 3;

/** A mean may lie where nobody's try does; this lies on a try, or says that the room is split. */
function middleOf(
  values: readonly number[],
  band: number,
  place: (value: number) => number,
  target: number
): Middle | null {
  if (values.length < FEWEST) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const last = sorted.length - 1;
  const [low, high] = [sorted[Math.floor(last / 2)], sorted[Math.ceil(last / 2)]];
  if (high - low > 2 * band) {
    const x = Math.min(Math.max(place((low + high) / 2), NAME / 2), WIDTH - NAME / 2);
    return { from: place(low), to: place(high), isSplit: true, name: { x, anchor: 'middle' } };
  }
  const x = place((low + high) / 2);
  // Away from the target, unless it would leave the drawing.
  const isRight = x < NAME || (x >= target && x <= WIDTH - NAME);
  const name = { x: x + (isRight ? 5 : -5), anchor: isRight ? 'start' : 'end' } as const;
  return { from: x, to: x, isSplit: false, name };
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
