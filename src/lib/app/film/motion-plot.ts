import type { MotionRow } from '$lib/film';
import { FOOT_M, INCH_M } from '$lib/model';
import { formatLength, formatSpeed, formatTime, type Units } from '$lib/scoring';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { NINE_IN_TEN } from './film-words';

export type Quantity = 'travel' | 'height' | 'speed';

interface Point {
  readonly t_s: number;
  readonly value: number;
  readonly sd: number;
}

/** One quantity against time, in the units of its drawing. */
export interface MotionPicture {
  readonly width: number;
  readonly height: number;
  readonly way: string;
  /** Where it lies nine times in ten. */
  readonly band: string;
  /** Frames without a place, and such that are unsure. */
  readonly lost: readonly number[];
  readonly unsure: readonly { readonly x: number; readonly y: number }[];
  readonly across: readonly { readonly at: number; readonly text: string }[];
  readonly up: readonly { readonly at: number; readonly text: string }[];
  readonly left: number;
  readonly bottom: number;
}

const HEIGHT = 190;
const EDGE = { left: 64, right: 14, top: 12, bottom: 28 };

export function motionPicture(
  rows: readonly MotionRow[],
  quantity: Quantity,
  units: Units,
  width: number
): MotionPicture {
  const points = rows.map((row) => pointOf(row, quantity));
  const seen = points.filter((point) => point !== null);
  const ends_s = rows[rows.length - 1]?.t_s ?? 1;
  const low = Math.min(0, ...seen.map(({ value, sd }) => value - NINE_IN_TEN * sd));
  const high = Math.max(0.02, ...seen.map(({ value, sd }) => value + NINE_IN_TEN * sd));
  const unit = unitOf(quantity, units);
  const x = scaleLinear([0, ends_s], [EDGE.left, width - EDGE.right]);
  const y = scaleLinear([low, high], [HEIGHT - EDGE.bottom, EDGE.top]);
  const round = scaleLinear([low / unit, high / unit], [0, 1]).ticks(4);
  // A line is broken where the bait was lost.
  const isSeen = (point: Point | null) => point !== null;
  const of = (point: Point | null) => point ?? { t_s: 0, value: 0, sd: 0 };
  const way = line<Point | null>()
    .defined(isSeen)
    .x((point) => x(of(point).t_s))
    .y((point) => y(of(point).value));
  const band = area<Point | null>()
    .defined(isSeen)
    .x((point) => x(of(point).t_s))
    .y0((point) => y(of(point).value - NINE_IN_TEN * of(point).sd))
    .y1((point) => y(of(point).value + NINE_IN_TEN * of(point).sd));
  return {
    width,
    height: HEIGHT,
    way: way.digits(1)(points) ?? '',
    band: band.digits(1)(points) ?? '',
    lost: rows.flatMap(({ t_s }, i) => (points[i] ? [] : [x(t_s)])),
    unsure: rows.flatMap(({ flag }, i) => {
      const point = points[i];
      return flag === 'unsure' && point ? [{ x: x(point.t_s), y: y(point.value) }] : [];
    }),
    across: x.ticks(4).map((t) => ({ at: x(t), text: formatTime(t) })),
    up: round.map((tick) => ({
      at: y(tick * unit),
      text: valueText(tick * unit, quantity, units)
    })),
    left: EDGE.left,
    bottom: HEIGHT - EDGE.bottom
  };
}

function pointOf(row: MotionRow, quantity: Quantity): Point | null {
  const [value, sd] = {
    travel: [row.travel_m, row.travel_sd_m],
    height: [row.height_m, row.height_sd_m],
    speed: [row.speed_m_s, row.speed_sd_m_s]
  }[quantity];
  return value === null || sd === null ? null : { t_s: row.t_s, value, sd };
}

/** What a round number of the axis is a number of, m or m/s. */
function unitOf(quantity: Quantity, units: Units): number {
  if (quantity === 'speed') return units === 'metric' ? 1 : FOOT_M;
  return units === 'metric' ? 0.01 : INCH_M;
}

function valueText(value: number, quantity: Quantity, units: Units): string {
  if (value === 0) return '0';
  return quantity === 'speed' ? formatSpeed(value, units) : formatLength(value, units, 'short');
}
