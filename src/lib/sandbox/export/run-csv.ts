import type { RunEvent } from '$lib/model';
import { csvTable } from '$lib/wire';
import type { Film } from '../film';
import type { Series } from '../series';

/** Micrometres and micronewtons: finer than anything the model may claim. */
const DECIMALS = 6;

/** SI; x is the distance from the rod hand, z the height over the surface, travel is to the angler. */
const COLUMNS = [
  'time_s',
  'tip_x_m',
  'tip_z_m',
  'tip_travel_m',
  'bait_x_m',
  'bait_z_m',
  'bait_travel_m',
  'height_over_bottom_m',
  'contact_0_or_1',
  'tip_tension_N',
  'bait_tension_N',
  'line_taken_in_m',
  'event'
] as const;

type Row = Record<(typeof COLUMNS)[number], string | number>;

/** The run as a table, CSV after RFC 4180: a row for each tick of the model, to the very end. */
export function runCsv(film: Film, series: Series): string {
  const happened = eventsByTick(film);
  const rows = series.t_s.map((_, tick) => rowAt(film, series, tick, happened.get(tick) ?? ''));
  return csvTable(COLUMNS, rows, DECIMALS);
}

function rowAt({ result, lineIn_m }: Film, series: Series, tick: number, event: string): Row {
  const { trace } = result;
  return {
    time_s: trace.t_s[tick],
    tip_x_m: trace.tip_x_m[tick],
    tip_z_m: trace.tip_z_m[tick],
    tip_travel_m: series.tipTravel_m[tick],
    bait_x_m: trace.bait_x_m[tick],
    bait_z_m: trace.bait_z_m[tick],
    bait_travel_m: series.baitTravel_m[tick],
    height_over_bottom_m: series.clearance_m[tick],
    contact_0_or_1: trace.contact[tick],
    tip_tension_N: trace.tip_tension_N[tick],
    bait_tension_N: trace.bait_tension_N[tick],
    line_taken_in_m: lineIn_m(trace.t_s[tick]),
    event
  };
}

/** Each event in the row of the tick in which it came to pass. */
function eventsByTick({ result }: Film): Map<number, string> {
  const { t_s } = result.trace;
  const rows = new Map<number, string>();
  for (const event of result.events) {
    const tick = t_s.findIndex((at) => at >= event.t_s - 1e-9);
    const before = rows.get(tick);
    rows.set(tick, before ? `${before}; ${nameOf(event)}` : nameOf(event));
  }
  return rows;
}

function nameOf(event: RunEvent): string {
  if (event.kind === 'stone') return `stone ${event.stone + 1}`;
  return event.kind === 'bite' ? `bite: ${event.bite}` : event.kind;
}
