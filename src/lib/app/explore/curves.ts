import type { GivenTo } from '$lib/compute';
import type { FiguresMade, RunFigures } from '$lib/compute/jobs/figures';
import { fall } from '$lib/course/items/moves';
import { FOOT_M, type ScenarioInput } from '$lib/model';
import type { OwnSpread, Units } from '$lib/scoring';
import { AXES, valuesOn, type Axis } from './axes';
import { exploredScenario, handEnds, type ExploreBase } from './base';
import {
  placesOf,
  shownReading,
  openIn,
  type AskJob,
  type ChartPoint,
  type ChartWanted,
  type Curve,
  type Stage
} from './chart';
import { comparedWeights } from './compared-weights';
import { LIMIT_TIP_M, type ChartKind } from './figures';
import { limitDrag, limitStages } from './limit-stages';

/** Limits are drawn one curve a weight, or a depth where the weight is along the axis. */
const DEPTHS: Record<Units, readonly number[]> = {
  imperial: [10, 20, 30].map((feet) => feet * FOOT_M),
  metric: [3, 6, 9]
};
/** So many runs are asked for at once: more would hold a change up. */
const AT_ONCE = 9;
/** Of what is not known nothing: for a first picture. */
const ALL_KNOWN: OwnSpread = { middle: {}, ends: [] };

/** The curves of a chart, empty yet: those that are asked for, then those to look at beside them. */
export function curvesOf({ kind, axis, base, kept, units }: ChartWanted): Curve[] {
  const of = (one: ExploreBase, isKept: boolean): Curve[] => {
    if (kind !== 'limits') return [{ name: '', base: one, isKept, points: [] }];
    const by: 'weight' | 'depth' = axis === AXES.weight ? 'depth' : 'weight';
    const drag = { ...one, tip_m: LIMIT_TIP_M[units] };
    const several = by === 'depth' ? DEPTHS[units] : comparedWeights(one.setup.bait.mass_kg);
    return several.map((value) => ({
      name: AXES[by].text(value, units),
      base: AXES[by].set(drag, value),
      isKept,
      points: []
    }));
  };
  return [...of(base, false), ...(kept ? of(kept, true) : [])];
}

/** All work on a chart, the roughest first. */
export function stagesOf(wanted: ChartWanted, curves: readonly Curve[]): Stage[] {
  const { kind } = wanted;
  if (kind === 'runs') return runStages(wanted, curves);
  return kind === 'limits' ? limitStages(wanted, curves) : fallStages(wanted, curves);
}

/** As a chart asks: a few at once, so that it hears between when it is cancelled. */
export function inBatches<T>(values: readonly T[]): T[][] {
  const count = Math.ceil(values.length / AT_ONCE);
  return Array.from({ length: count }, (_, i) => values.slice(i * AT_ONCE, (i + 1) * AT_ONCE));
}

function runStages({ axis, units }: ChartWanted, curves: readonly Curve[]): Stage[] {
  const { first, finer } = valuesOn(axis, units);
  const plain = (curve: number, values: readonly number[]): Stage => ({
    curve,
    make: async (ask) => {
      const made = await figuresAt(
        ask,
        values.map((at) => axis.set(curves[curve].base, at)),
        {}
      );
      return values.flatMap((at, i) => (made[i] ? [pointOf(at, made[i])] : []));
    }
  });
  const banded = (at: number): Stage => ({
    curve: 0,
    make: (ask) => bandedPoint(ask, axis, curves[0].base, at)
  });
  return [
    plain(0, first),
    ...placesOf(curves, true).map((i) => plain(i, first)),
    ...inBatches(finer).map((values) => plain(0, values)),
    ...first.map(banded),
    ...placesOf(curves, true).flatMap((i) => inBatches(finer).map((values) => plain(i, values))),
    ...finer.map(banded)
  ];
}

async function figuresAt(
  ask: AskJob,
  bases: readonly ExploreBase[],
  given: Omit<GivenTo<'figures'>, 'scenarios'>
): Promise<(FiguresMade | null)[]> {
  const scenarios = bases.map((base) => exploredScenario(base));
  const made = await ask('figures', {
    scenarios: scenarios.filter((one) => one !== null),
    ...given
  });
  let next = 0;
  return scenarios.map((one) => (one ? made[next++] : null));
}

const RUN_FIGURES = ['travel_m', 'peak_height_m', 'contact'] as const;

function pointOf(at: number, { figures, ends }: FiguresMade, hand?: (RunFigures | undefined)[]) {
  const readings: ChartPoint['readings'] = {};
  for (const name of RUN_FIGURES) {
    const own = hand?.map((one) => one?.[name]).filter((value) => value !== undefined) ?? [];
    const all = [figures[name], ...own];
    readings[name] = {
      value: figures[name],
      ...(ends && { ends: ends[name] }),
      // A tip that cannot go so far leaves that end open.
      ...(own.length === 2 && { hand: [Math.min(...all), Math.max(...all)] })
    };
  }
  return { at, readings };
}

async function bandedPoint(
  ask: AskJob,
  axis: Axis,
  base: ExploreBase,
  at: number
): Promise<ChartPoint[]> {
  const here = axis.set(base, at);
  const [made] = await figuresAt(ask, [here], { unknowns: openIn(base) });
  if (!made) return [];
  const ends = handEnds(here);
  const hand = ends && (await figuresAt(ask, ends, {}));
  return [
    pointOf(
      at,
      made,
      hand?.map((one) => one?.figures)
    )
  ];
}

/** A fall does not feel the bottom: its time is that of the whole way, in a deep enough water. */
function fallStages({ axis, units }: ChartWanted, curves: readonly Curve[]): Stage[] {
  const { first, finer } = valuesOn(axis, units);
  const depths_m = [...first, ...finer].sort((a, b) => a - b);
  const stage = (curve: number, isBanded: boolean): Stage => ({
    curve,
    make: async (ask) => {
      const { setup } = curves[curve].base;
      const unknowns = isBanded ? openIn(curves[curve].base) : ALL_KNOWN;
      const made = await ask('falls', { setup, depths_m, unknowns });
      return made.map(({ depth_m, fall_s, ends_s }) => ({
        at: depth_m,
        readings: { fall_s: { value: fall_s, ...(isBanded && { ends: ends_s }) } }
      }));
    }
  });
  return [stage(0, false), ...placesOf(curves, true).map((i) => stage(i, false)), stage(0, true)];
}

/** The run behind a point; null for one that cannot be. */
export function runAt(
  kind: ChartKind,
  { base }: Pick<Curve, 'base'>,
  axis: Axis,
  { at, readings }: ChartPoint
): ScenarioInput | null {
  const here = axis.set(base, at);
  if (kind === 'runs') return exploredScenario(here);
  if (kind === 'falls') return fallScenario(here, readings.fall_s?.value ?? 0);
  const pace_m_s = shownReading('limit_m_s', readings.limit_m_s)?.value ?? 0;
  if (pace_m_s === 0) return null;
  const drag = limitDrag({ ...here, duration_s: here.tip_m / pace_m_s });
  return drag && { ...drag, hold_s: SEEN_S };
}

/** Long enough after what a chart tells of a run to see that it is over, s. */
const SEEN_S = 2;

function fallScenario(base: ExploreBase, fall_s: number): ScenarioInput {
  const { setup, move, hold_s } = fall(base.setup, fall_s + SEEN_S);
  return { ...setup, move, hold_s };
}
