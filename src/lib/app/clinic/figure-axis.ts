import { figureTicks, type FigureScale, type Units } from '$lib/scoring';
import { scaleLinear } from 'd3-scale';

/** An axis of a task's figure, in the units of a drawing: from nothing on, with all of what was asked on it. */
export interface FigureAxis {
  at: (value: number) => number;
  /** Where what was asked lies; null where none was. */
  band: { x: number; width: number } | null;
  ticks: { x: number; label: string }[];
}

/** What is asked takes no more of the axis than this part, where tries do not need it. */
const ROOM = 1.25;
/** A count that is asked is as wide as one. */
const HALF_COUNT = 0.5;

/** @param reach where the axis begins and ends in the drawing. @param most how many ticks at most */
export function figureAxis(
  { unit, asked }: Pick<FigureScale, 'unit' | 'asked'>,
  values: readonly number[],
  units: Units,
  { reach, most }: { reach: readonly [number, number]; most: number }
): FigureAxis {
  const [low, high] = asked ?? [0, null];
  const half = unit === 'count' ? HALF_COUNT : 0;
  const from = Math.min(0, low - half, ...values);
  const end = unit === 'marks' ? 100 : unit === 'share' ? 1 : ROOM * Math.max(low, high ?? 0);
  const to = Math.max(end + half, ...values.map((value) => value + half), from + half || 1e-3);
  const at = scaleLinear([from, to], [...reach]);
  const left = at(low - half);
  const right = high === null ? reach[1] : at(high + half);
  return {
    at,
    band: asked ? { x: left, width: right - left } : null,
    ticks: figureTicks({ unit }, [from, to], units, most).map(({ value, label }) => {
      return { x: at(value), label };
    })
  };
}
