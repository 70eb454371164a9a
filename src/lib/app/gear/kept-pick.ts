import * as v from 'valibot';
import { BOX_OZ } from '$lib/course/box';
import type { Shelf } from '$lib/shell';
import { CHART_BEDS, CHART_DEPTHS, CHART_WINDS } from './weight-water';

const KEY = 'feltfoot-weight-pick';

/** A weight that was tied on: for which water, and on whose gear. */
const pick = v.object({
  water: v.object({
    feet: v.pipe(v.number(), v.values(CHART_DEPTHS.map(({ feet }) => feet))),
    wind_m_s: v.pipe(v.number(), v.values(CHART_WINDS.map(({ m_s }) => m_s))),
    bed: v.picklist(CHART_BEDS)
  }),
  outfit: v.optional(v.string()),
  ounces: v.picklist(BOX_OZ)
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
