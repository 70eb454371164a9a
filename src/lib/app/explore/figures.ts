import type { RunFigures } from '$lib/compute/jobs/figures';
import { FOOT_M, INCH_M } from '$lib/model';
import { formatLength, formatShare, type Units } from '$lib/scoring';
import { csvTable } from '$lib/wire';
import { scaleLinear } from 'd3-scale';
import type { Axis } from './axes';
import type { ChartPoint } from './chart-run.svelte';

export type FigureName = keyof RunFigures;

export const FIGURE_NAMES: readonly { value: FigureName; name: string }[] = [
  { value: 'travel_m', name: 'Jig goes' },
  { value: 'peak_height_m', name: 'Highest' },
  { value: 'contact', name: 'On the bottom' }
];

export function figureText(name: FigureName, value: number, units: Units): string {
  return name === 'contact' ? formatShare(value) : formatLength(value, units);
}

const UNIT: Record<Units, Record<Exclude<FigureName, 'contact'>, readonly [number, string]>> = {
  imperial: { travel_m: [FOOT_M, 'ft'], peak_height_m: [INCH_M, 'in'] },
  metric: { travel_m: [1, 'm'], peak_height_m: [0.01, 'cm'] }
};

export interface PlotFrame {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Places and ticks of a chart of these points, all that are drawn in it. */
export function chartScale(
  points: readonly ChartPoint[],
  name: FigureName,
  axis: Axis,
  units: Units,
  { left, right, top, bottom }: PlotFrame
) {
  const [size, unit] = name === 'contact' ? [0.01, '%'] : UNIT[units][name];
  const tops = points.map(({ figures, half }) => figures[name] + (half?.[name] ?? 0));
  const most =
    name === 'contact' ? 100 : Math.max(LEAST[name] / size, ...tops.map((m) => m / size));
  const x = scaleLinear([axis.least, axis.most], [left, right]);
  const y = scaleLinear([0, most], [bottom, top]).nice(4);
  const [floor, ceiling] = y.domain();
  return {
    x,
    y: (value: number) => y(Math.min(ceiling, Math.max(floor, value / size))),
    unit,
    xTicks: Array.from({ length: 4 }, (_, i) => {
      const value = axis.least + ((axis.most - axis.least) * i) / 3;
      return { x: x(value), text: axis.text(value, units) };
    }),
    yTicks: y.ticks(4).map((value) => ({ y: y(value), text: `${value}` }))
  };
}

/** A jig that hardly moves is not blown up to fill the chart, m. */
const LEAST: Record<Exclude<FigureName, 'contact'>, number> = {
  travel_m: 0.3,
  peak_height_m: 0.05
};

/** The chart as a table, in SI. */
export function chartCsv(points: readonly ChartPoint[], axisName: string): string {
  const columns = [
    axisName,
    'travel_m',
    'travel_half_m',
    'peak_height_m',
    'height_half_m',
    'on_bottom',
    'on_bottom_half'
  ];
  const rows = points.map(({ at, figures, half }) => ({
    [axisName]: at,
    travel_m: figures.travel_m,
    travel_half_m: half?.travel_m,
    peak_height_m: figures.peak_height_m,
    height_half_m: half?.peak_height_m,
    on_bottom: figures.contact,
    on_bottom_half: half?.contact
  }));
  return csvTable(columns, rows);
}
