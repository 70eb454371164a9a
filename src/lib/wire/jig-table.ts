import * as v from 'valibot';
import { between, day, line, shortName, time } from './fields';

/** Most people and jigs of one table: a club's season. */
const MOST_MEASURED = 500;
const MOST_JIGS = 200;

const finite = v.pipe(v.number(), v.finite());
const interval = v.tuple([finite, finite]);

/** One session's value of one number. */
const value = v.strictObject({
  estimate: finite,
  interval90: interval,
  /** Deviations from what the others say; null where there are too few. */
  z: v.nullable(finite)
});
/** What all sessions of a jig say of one number together. */
const pooled = v.strictObject({
  count: v.pipe(v.number(), v.integer(), v.minValue(2)),
  estimate: finite,
  interval90: interval,
  /** Between people, beyond their errors; of a drag area the deviation of its logarithm. */
  between_sd: between(0, 1e3),
  birge: between(0, 1e6),
  agrees: v.boolean()
});

const numbers = <S extends v.GenericSchema>(one: S) => {
  return v.strictObject({ drag_area_m2: v.nullable(one), lift_to_drag: v.nullable(one) });
};

/** Who measured, when, how, and with what error. */
const measured = v.strictObject({
  by: line(60, 0),
  on: day,
  session: shortName,
  tests: between(0, 1000),
  /** Tests whose lengths were read off a clip; the others were measured by hand. */
  filmed: between(0, 1000),
  /** Times that a drop was timed. */
  drops: between(0, 1000),
  /** Median deviation of a measured way, m. */
  error_m: v.nullable(between(0, 100)),
  /** Null where the tests do not tell it. */
  numbers: numbers(value)
});

/** What a club, or a maker, has measured of its jigs. docs/jig-table-format.md. */
export const jigTable = v.strictObject({
  format: v.literal('feltfoot-jig-table'),
  version: v.literal(1),
  at: time,
  /** Version of the bait model that was fitted. */
  model: shortName,
  /** Made up to show how it goes. */
  invented: v.boolean(),
  jigs: v.pipe(
    v.array(
      v.strictObject({
        name: line(60),
        mass_kg: between(1e-4, 1),
        pooled: numbers(pooled),
        measured: v.pipe(v.array(measured), v.minLength(1), v.maxLength(MOST_MEASURED))
      })
    ),
    v.maxLength(MOST_JIGS)
  )
});

export type JigTable = v.InferOutput<typeof jigTable>;
export type TableJig = JigTable['jigs'][number];
export type MeasuredJig = TableJig['measured'][number];
