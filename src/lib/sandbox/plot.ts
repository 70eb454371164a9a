import { formatLength, type Units } from '$lib/scoring';
import { formatPull } from '$lib/scoring/display';
import { max, maxIndex, min } from 'd3-array';
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { FeltBand, Series } from './series';

/** Small plots below each other on one axis of time. */

/** Left of the axis, px: each row's name and its value at the scrubber. */
const GUTTER = 92;
const MARGIN = 12;
const ROW = 60;
const STRIP = 46;
const AXIS = 34;
/** Free above the highest point of a curve, px. */
const HEADROOM = 14;
/** A felt signal weaker than this looks like it, N. */
const LEAST_FELT_N = 0.02;
/** Curves are drawn with about this many points; more cannot be seen. */
const POINTS = 600;

export interface PlotRow {
  readonly name: string;
  readonly isBait: boolean;
  readonly top: number;
  /** Where the value 0 is, px below the row's top. */
  readonly zero: number;
  /** Where the row's value is written, px below its top. */
  readonly foot: number;
  /** Empty for the contact strip. */
  readonly path: string;
  /** The same curve, filled down to zero. */
  readonly area: string;
  valueAt(tick: number): string;
  /** The tick of its highest value; null for the contact strip, which has none. */
  readonly peak: number | null;
}

export interface PlotSet {
  readonly x: ScaleLinear<number, number>;
  readonly height: number;
  readonly rows: readonly PlotRow[];
}

interface Curve {
  readonly name: string;
  readonly isBait: boolean;
  readonly values: readonly number[];
  /** Smallest height of the axis, so that next to nothing looks like it. */
  readonly least: number;
  readonly label: (value: number) => string;
}

export function plotsOf(
  series: Series,
  felt: FeltBand,
  ends_s: number,
  width: number,
  units: Units
): PlotSet {
  const x = scaleLinear([0, ends_s], [GUTTER, Math.max(width - MARGIN, GUTTER + 1)]);
  const length = (m: number) => formatLength(m, units);
  const pull = (newton: number) => formatPull(newton, units);
  const [tip, bait, height, tension]: Curve[] = [
    { name: 'Tip', isBait: false, values: series.tipTravel_m, least: 0.1, label: length },
    { name: 'Jig', isBait: true, values: series.baitTravel_m, least: 0.1, label: length },
    { name: 'Height', isBait: true, values: series.height_m, least: 0.05, label: length },
    { name: 'Pull', isBait: false, values: series.tension_N, least: 0.2, label: pull }
  ];
  // Tip and bait share a scale: that the one is not the other is what there is to see.
  const travel = Math.max(topOf(tip), topOf(bait));
  return {
    x,
    height: 5 * ROW + STRIP + AXIS,
    rows: [
      curveRow(tip, series, x, ends_s, 0, travel),
      curveRow(bait, series, x, ends_s, ROW, travel),
      curveRow(height, series, x, ends_s, 2 * ROW, topOf(height)),
      contactRow(series, 3 * ROW),
      curveRow(tension, series, x, ends_s, 3 * ROW + STRIP, topOf(tension)),
      feltRow(felt, series, x, ends_s, 4 * ROW + STRIP, units)
    ]
  };
}

function topOf({ values, least }: Curve): number {
  return Math.max(max(values) ?? 0, least);
}

function curveRow(
  curve: Curve,
  series: Series,
  x: ScaleLinear<number, number>,
  ends_s: number,
  top: number,
  most: number
): PlotRow {
  const y = scaleLinear([0, most], [ROW, HEADROOM]);
  const ticks = drawnTicks(series, ends_s);
  const along = (i: number) => x(series.t_s[i]);
  const up = (i: number) => y(curve.values[i]);
  return {
    name: curve.name,
    isBait: curve.isBait,
    top,
    zero: ROW,
    foot: ROW,
    path: line<number>(along, up)(ticks) ?? '',
    area: area<number>(along, ROW, up)(ticks) ?? '',
    valueAt: (tick) => curve.label(curve.values[tick]),
    peak: maxIndex(curve.values)
  };
}

/** Every so many ticks up to the end: more cannot be seen. */
function drawnTicks({ t_s }: Series, ends_s: number): number[] {
  const stride = Math.max(1, Math.ceil(t_s.length / POINTS));
  return t_s.map((_, i) => i).filter((i) => i % stride === 0 && t_s[i] <= ends_s + 1e-9);
}

/** The felt signal swings about its zero: a band from its lowest to its highest. */
function feltRow(
  { low_N, high_N }: FeltBand,
  series: Series,
  x: ScaleLinear<number, number>,
  ends_s: number,
  top: number,
  units: Units
): PlotRow {
  const most = Math.max(max(high_N) ?? 0, -(min(low_N) ?? 0), LEAST_FELT_N);
  const middle = (ROW + HEADROOM) / 2 + 4;
  const half = (ROW - HEADROOM) / 2 - 2;
  const y = scaleLinear([-most, most], [middle + half, middle - half]);
  const band = area<number>(
    (i) => x(series.t_s[i]),
    (i) => y(low_N[i]),
    (i) => y(high_N[i])
  );
  return {
    name: 'Felt',
    isBait: false,
    top,
    zero: middle,
    foot: ROW,
    // Every tick: a knock is over in one.
    path: band(series.t_s.map((_, i) => i).filter((i) => series.t_s[i] <= ends_s)) ?? '',
    area: '',
    valueAt: (tick) => formatPull(high_N[tick] - low_N[tick], units),
    peak: maxIndex(high_N, (high, tick) => high - low_N[tick])
  };
}

function contactRow(series: Series, top: number): PlotRow {
  return {
    name: 'Bottom',
    isBait: true,
    top,
    zero: STRIP,
    foot: STRIP,
    path: '',
    area: '',
    valueAt: (tick) => (series.contact[tick] === 1 ? 'on' : 'lifted'),
    peak: null
  };
}

/** Round moments for the axis, not closer than their labels allow. */
export function timeTicks(x: ScaleLinear<number, number>): number[] {
  const [from, to] = x.range();
  return x.ticks(Math.max(2, Math.floor((to - from) / 90)));
}
