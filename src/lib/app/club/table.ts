import {
  agreementOf,
  ownValueOf,
  parseSession,
  POOLED_NAMES,
  POOLED_SCALE,
  sessionInputOf,
  type FitResult,
  type PooledName,
  type PooledValue
} from '$lib/fit';
import { MODEL_VERSION } from '$lib/model';
import {
  csvTable,
  type ClubSession,
  type JigTable,
  type MeasuredJig,
  type TableJig,
  type TestSession
} from '$lib/wire';

export interface FittedSession extends ClubSession {
  result: FitResult;
}

/** A deviation that nobody gave: 15 %, at least 2 cm (docs/fit.md). */
const SD_PART = 0.15;
const LEAST_SD_M = 0.02;
const Z90 = 1.6449;

/** The table of all jigs, in the order in which they were first met. */
export function jigTableOf(fitted: readonly FittedSession[], at: string): JigTable {
  const names = [...new Set(fitted.map(({ jig }) => jig))];
  return {
    format: 'feltfoot-jig-table',
    version: 1,
    at,
    model: MODEL_VERSION,
    invented: fitted.some(({ session }) => session.invented),
    jigs: names.map((name) =>
      jigOf(
        name,
        fitted.filter(({ jig }) => jig === name)
      )
    )
  };
}

function jigOf(name: string, fitted: readonly FittedSession[]): TableJig {
  const measured = fitted.map(({ session }) => whoAndHow(session));
  const pooled: TableJig['pooled'] = { drag_area_m2: null, lift_to_drag: null };
  for (const number of POOLED_NAMES) pooled[number] = poolInto(measured, fitted, number);
  return { name, mass_kg: fitted[0].session.gear.bait.mass_kg, pooled, measured };
}

/** Writes each one's value into its place; returns what they say together. */
function poolInto(
  measured: MeasuredJig[],
  fitted: readonly FittedSession[],
  name: PooledName
): TableJig['pooled'][PooledName] {
  const own = fitted.map(({ session, result }) => {
    const found = result.unknowns[name];
    return found ? ownValueOf(parseSession(sessionInputOf(session)), name, found) : null;
  });
  const values = own.filter((one) => one !== null);
  const said = agreementOf(values);
  const z = said?.z ? [...said.z] : [];
  own.forEach((one, i) => {
    if (one) measured[i].numbers[name] = { ...readOff(one, name), z: z.shift() ?? null };
  });
  if (!said) return null;
  const { mean: value, sd, between_sd, birge, agrees } = said;
  return { count: values.length, ...readOff({ value, sd }, name), between_sd, birge, agrees };
}

function readOff({ value, sd }: PooledValue, name: PooledName) {
  const { from } = POOLED_SCALE[name];
  const interval90: [number, number] = [from(value - Z90 * sd), from(value + Z90 * sd)];
  return { estimate: from(value), interval90 };
}

function whoAndHow({ by, on, id, tests, drops }: TestSession): MeasuredJig {
  const errors = tests.flatMap(({ travel_m, travel_sd_m }) =>
    travel_m === undefined ? [] : [travel_sd_m ?? Math.max(LEAST_SD_M, SD_PART * travel_m)]
  );
  return {
    ...{ by, on, session: id },
    tests: tests.length,
    filmed: tests.filter(({ filmed }) => filmed).length,
    drops: drops.reduce((sum, { times_s }) => sum + times_s.length, 0),
    error_m: medianOf(errors),
    numbers: { drag_area_m2: null, lift_to_drag: null }
  };
}

function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length > 0 ? sorted[sorted.length >> 1] : null;
}

const COLUMNS = [
  'jig',
  'mass_kg',
  'number',
  'by',
  'on',
  'tests',
  'filmed',
  'drops',
  'error_m',
  'estimate',
  'low90',
  'high90',
  'z',
  'birge',
  'agrees'
] as const;

/** The same, a line for each value; what all say together is by "all". */
export function jigTableCsv({ jigs }: JigTable): string {
  const rows = jigs.flatMap(({ name: jig, mass_kg, pooled, measured }) =>
    POOLED_NAMES.flatMap((number) => {
      const head = { jig, mass_kg, number };
      const all = pooled[number];
      return [
        ...measured.map(({ numbers, ...who }) => {
          const { by, on, tests, filmed, drops, error_m } = who;
          const how = { by, on, tests, filmed, drops, error_m };
          return { ...head, ...how, ...ends(numbers[number]), z: numbers[number]?.z };
        }),
        { ...head, by: 'all', ...ends(all), birge: all?.birge, agrees: all?.agrees }
      ];
    })
  );
  // A drag area is a few square centimetres: eight decimals of a square metre.
  return csvTable(COLUMNS, rows, 8);
}

function ends(one: { estimate: number; interval90: [number, number] } | null) {
  return one && { estimate: one.estimate, low90: one.interval90[0], high90: one.interval90[1] };
}
