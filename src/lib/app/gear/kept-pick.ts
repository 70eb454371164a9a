import * as v from 'valibot';
import { BOX_OZ } from '$lib/course/box';
import type { WeightRow } from '$lib/course/weight-chart';
import type { Shelf } from '$lib/shell';
import { CHART_BEDS, CHART_DEPTHS, CHART_WINDS } from './weight-water';

const KEY = 'feltfoot-weight-pick';

/** Text has no number for what never ends: there it is null. */
const seconds = v.pipe(
  v.nullable(v.number()),
  v.transform((s) => s ?? Infinity)
);
const row: v.GenericSchema<unknown, WeightRow> = v.object({
  ounces: v.number(),
  fall_s: seconds,
  fall_band_s: seconds,
  drag_s: v.nullable(v.number()),
  pull_N: v.number()
});

/** A weight that was tied on: for which water, and on whose gear. */
const pick = v.object({
  water: v.object({
    feet: v.pipe(v.number(), v.values(CHART_DEPTHS.map(({ feet }) => feet))),
    wind_m_s: v.pipe(v.number(), v.values(CHART_WINDS.map(({ m_s }) => m_s))),
    bed: v.picklist(CHART_BEDS)
  }),
  outfit: v.optional(v.string()),
  ounces: v.picklist(BOX_OZ),
  /** What came of each weight of the box: nothing is worked out again while one reads. */
  rows: v.pipe(v.array(row), v.length(BOX_OZ.length))
});
export type WeightPick = v.InferOutput<typeof pick>;

/** Null where none was made, or what was kept cannot be read. */
export function keptPick(shelf: Pick<Shelf, 'getItem'>): WeightPick | null {
  try {
    return v.parse(pick, JSON.parse(shelf.getItem(KEY) ?? ''));
  } catch {
    return null;
  }
}

/** Null puts it away. A shelf that is full or forbidden keeps nothing; the page goes on without it. */
export function keepPick(shelf: Shelf, made: WeightPick | null): void {
  try {
    shelf.setItem(KEY, JSON.stringify(made));
  } catch {
    // Only a reload would miss it.
  }
}
