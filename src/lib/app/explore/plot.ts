import type { Units } from '$lib/scoring';
import type { PlotEdges, PlotTick } from '$lib/shell';
import { scaleLinear } from 'd3-scale';
import { tickText, ticksOf, type Axis } from './axes';
import { shownReading, type ChartPoint, type Curve, type Reading } from './chart';
import { FIGURES, numbersFor, type FigureName } from './figures';

export interface PlotWanted {
  curves: readonly Curve[];
  figure: FigureName;
  axis: Axis;
  units: Units;
  width: number;
  /** A value along the side that is marked, as the pace that is set. */
  level?: number;
}

/** Edges of the plot, px. */
const EDGE = { left: 40, right: 14, top: 28, bottom: 44 };
/** More room below for names of groups, px. */
const GROUPS_PX = 16;
/** Bars of several curves stand so far apart, px. */
const ASIDE = 5;

/** A chart in the units of its drawing. */
export interface Plot extends PlotEdges {
  unit: string;
  across: readonly PlotTick[];
  /** Under the numbers, once for neighbours that share it. */
  groups: readonly PlotTick[];
  up: readonly PlotTick[];
  /** Where nothing is known of the gear, closed; only of a chart with one curve. */
  band: string;
  /** The two ends of what the hand does. */
  hand: readonly string[];
  drawn: readonly DrawnCurve[];
  level: number | null;
  x: (at: number) => number;
  y: (value: number) => number;
}

export interface DrawnCurve {
  name: string;
  /** Which dashes and marks are its own. */
  style: number;
  isKept: boolean;
  path: string;
  marks: readonly {
    at: number;
    x: number;
    y: number;
    /** Ends of what is likely, and of the hand, where no area is hatched for it. */
    bar: readonly [number, number] | null;
    handBar: readonly [number, number] | null;
  }[];
}

export function plotOf({ curves, figure, axis, units, width, level }: PlotWanted): Plot {
  const height = Math.round(Math.min(370, Math.max(280, width * 0.56)));
  const { left, top } = EDGE;
  const [right, bottom] = [
    width - EDGE.right,
    height - EDGE.bottom - (axis.groupText ? GROUPS_PX : 0)
  ];
  const { side = (value: number) => value } = FIGURES[figure];
  const up = (value: number) => side(value, units);
  const all = curves.flatMap(({ points }) =>
    points.map(({ readings }) => shownReading(figure, readings[figure]))
  );
  const drawn = [...(level === undefined ? [] : [level]), ...all.flatMap((one) => valuesIn(one))];
  const most = Math.max(0, ...drawn.map(up).filter(Number.isFinite));
  const numbers = numbersFor(figure, most, units);
  const ceiling = numbers.values[numbers.values.length - 1].value;
  const ticks = ticksOf(axis, units);
  const several = curves.filter(({ isKept }) => !isKept).length > 1;
  const aside = axis.isChoice ? (right - left) / (2 * ticks.length) : several ? 3 * ASIDE : 0;
  const along = scaleLinear([ticks[0], ticks[ticks.length - 1]], [left + aside, right - aside]);
  const high = scaleLinear([0, ceiling], [bottom, top]);
  const x = (at: number) => round(along(at));
  const y = (value: number) => round(high(Math.min(ceiling, Math.max(0, up(value)))));
  const own = curves.find(({ isKept }) => !isKept);
  const isBanded = !several && !axis.isChoice;
  const canBe = (value: number) => Number.isFinite(up(value));
  const draw = { figure, ticks, x, y, canBe, isJoined: !axis.isChoice };
  return {
    ...{ width, height, left, right, top, bottom, x, y },
    unit: numbers.unit,
    across: ticks.map((at) => ({ at: x(at), text: tickText(axis, at, units) })),
    groups: groupsOf(axis, ticks, x),
    up: numbers.values.map(({ value, text }) => ({ at: round(high(value)), text })),
    band: isBanded && own ? bandPath(own.points, figure, x, y) : '',
    hand: isBanded && own ? handPaths(own.points, figure, x, y) : [],
    drawn: curves.map((curve, i) => {
      const style = several ? i % SEVERAL_STYLES : 0;
      const shift = several ? (style - 1) * ASIDE : 0;
      return drawnCurve(curve, style, shift, { ...draw, hasBars: !isBanded && !curve.isKept });
    }),
    level: level === undefined ? null : y(level)
  };
}

function groupsOf({ groupText }: Axis, ticks: readonly number[], x: Place): Plot['groups'] {
  if (!groupText) return [];
  const texts = [...new Set(ticks.map(groupText))];
  return texts.map((text) => {
    const members = ticks.filter((at) => groupText(at) === text).map(x);
    return { at: (members[0] + members[members.length - 1]) / 2, text };
  });
}

/** As many curves of one chart are told apart. */
const SEVERAL_STYLES = 3;

const valuesIn = (one: Reading | null) =>
  one ? [one.value, ...(one.ends ?? []), ...(one.hand ?? [])] : [];

interface Drawing {
  figure: FigureName;
  ticks: readonly number[];
  x: (at: number) => number;
  y: (value: number) => number;
  canBe: (value: number) => boolean;
  isJoined: boolean;
  hasBars: boolean;
}

function drawnCurve(
  { name, isKept, points }: Curve,
  style: number,
  shift: number,
  { figure, ticks, x, y, canBe, isJoined, hasBars }: Drawing
): DrawnCurve {
  const read = points.flatMap(({ at, readings }) => {
    const reading = shownReading(figure, readings[figure]);
    return reading && canBe(reading.value) ? [{ at, reading }] : [];
  });
  const places = read.map(({ at, reading }) => `${x(at)} ${y(reading.value)}`);
  return {
    ...{ name, style, isKept },
    path: isJoined && places.length > 1 ? `M${places.join('L')}` : '',
    marks: read
      .filter(({ at }) => ticks.includes(at))
      .map(({ at, reading: { value, ends, hand } }) => ({
        at,
        x: x(at) + shift,
        y: y(value),
        bar: hasBars && ends ? ([y(ends[0]), y(ends[1])] as const) : null,
        handBar: hasBars && hand ? ([y(hand[0]), y(hand[1])] as const) : null
      }))
  };
}

type Place = (value: number) => number;

function bandPath(points: readonly ChartPoint[], figure: FigureName, x: Place, y: Place): string {
  const banded = points.flatMap(({ at, readings }) => {
    const ends = readings[figure]?.ends;
    return ends ? [{ x: x(at), low: y(ends[0]), high: y(ends[1]) }] : [];
  });
  if (banded.length < 2) return '';
  const over = banded.map((one) => `${one.x} ${one.high}`);
  const under = banded.map((one) => `${one.x} ${one.low}`).reverse();
  return `M${[...over, ...under].join('L')}Z`;
}

function handPaths(points: readonly ChartPoint[], figure: FigureName, x: Place, y: Place) {
  const known = points.flatMap(({ at, readings }) => {
    const hand = readings[figure]?.hand;
    return hand ? [{ at, hand }] : [];
  });
  if (known.length < 2) return [];
  return [0, 1].map(
    (end) => `M${known.map(({ at, hand }) => `${x(at)} ${y(hand[end])}`).join('L')}`
  );
}

/** The drawn value that is nearest to a place along the picture, px; null where there is none. */
export function nearestAt({ x }: Pick<Plot, 'x'>, values: readonly number[], px: number) {
  const off = (at: number) => Math.abs(x(at) - px);
  return values.reduce<number | null>(
    (best, at) => (best === null || off(at) < off(best) ? at : best),
    null
  );
}

function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
