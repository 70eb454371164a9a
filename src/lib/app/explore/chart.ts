import type { GivenTo, JobName, MadeBy } from '$lib/compute';
import type { OwnSpread, Units } from '$lib/scoring';
import type { Axis } from './axes';
import type { ExploreBase } from './base';
import type { ChartKind, FigureName } from './figures';

export type Ends = readonly [low: number, high: number];

/** A figure where the chart has run the model. */
export interface Reading {
  value: number;
  /** Where it may lie for all that is not known of the gear. */
  ends?: Ends;
  /** Where nine tries in ten of the own hand lie. */
  hand?: Ends;
}

/** As a chart shows it: of a speed limit the pace that is safe, once that is known, and nothing above it. */
export function shownReading(figure: FigureName, reading?: Reading): Reading | null {
  if (!reading) return null;
  if (figure !== 'limit_m_s') return reading;
  return reading.ends ? { value: Math.max(0, reading.ends[0]) } : null;
}

export interface ChartPoint {
  /** Along the axis, SI. */
  at: number;
  readings: Partial<Record<FigureName, Reading>>;
}

export interface Curve {
  /** What it is of, where there are several. */
  name: string;
  base: ExploreBase;
  /** As it was before anything was changed. */
  isKept: boolean;
  /** By value. */
  points: readonly ChartPoint[];
}

export interface ChartWanted {
  kind: ChartKind;
  axis: Axis;
  base: ExploreBase;
  /** To look at beside it. */
  kept: ExploreBase | null;
  units: Units;
}

/** Asks compute/ for a job. */
export type AskJob = <Name extends JobName>(
  job: Name,
  given: GivenTo<Name>
) => Promise<MadeBy<Name>>;

/** A piece of the work on a chart: after each there is more to see. */
export interface Stage {
  /** Place of its curve. */
  curve: number;
  make: (ask: AskJob) => Promise<ChartPoint[]>;
}

/** Where those curves stand that are asked for, or kept to look at beside them. */
export const placesOf = (curves: readonly Curve[], isKept: boolean): number[] =>
  curves.flatMap((curve, i) => (curve.isKept === isKept ? [i] : []));

/** Slack is what its slider says, whatever is along the axis: only what water does to the jig stays open. */
export const openIn = ({ spread }: ExploreBase): OwnSpread | 'drag' => spread ?? 'drag';
