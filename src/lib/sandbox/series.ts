import { feltSignal, riseOver, type Result, type Setup, type Trace } from '$lib/model';
import { shownLifts } from './shown-lifts';

/** The tip's way is stepped off with dividers set to this, m, as the scoring room does. */
const DIVIDERS_M = 0.005;
/** A run is shown until this long after the last movement, s. */
const AFTERGLOW_S = 0.8;
/** The bait, or the tip, has moved if it went further than this from its last place, m. */
const MOVED_M = 0.001;

/** What the plots draw: one value a tick, SI, travel positive towards the angler. */
export interface Series {
  readonly t_s: readonly number[];
  readonly tipTravel_m: readonly number[];
  /** How far the tip is from where it began. */
  readonly tipOff_m: readonly number[];
  /** How long the tip has moved, its rests between included. */
  readonly tipTime_s: readonly number[];
  readonly baitTravel_m: readonly number[];
  /** As hops are measured: 0 on the bottom, and while it falls off a rock. */
  readonly height_m: readonly number[];
  /** Above what lies below it, m. */
  readonly clearance_m: readonly number[];
  readonly tension_N: readonly number[];
  /** 0 off the bottom, as it is drawn: flights lower than the bottom's grain are none. */
  readonly contact: readonly (0 | 1)[];
  readonly hops: Result['hops'];
}

export function seriesOf(
  { trace, hops }: Pick<Result, 'trace' | 'hops'>,
  heightAt: (x_m: number) => number
): Series {
  const from_m = trace.bait_x_m[0];
  const { contact } = shownLifts(trace, heightAt);
  const clearance_m = trace.bait_z_m.map((z, i) =>
    trace.contact[i] === 1 ? 0 : z - heightAt(trace.bait_x_m[i])
  );
  return {
    t_s: trace.t_s,
    ...tipSeriesOf(trace),
    baitTravel_m: trace.bait_x_m.map((x) => Math.sign(from_m) * (from_m - x)),
    height_m: risesOf(trace, clearance_m),
    clearance_m,
    tension_N: trace.tip_tension_N,
    contact,
    hops
  };
}

function risesOf({ bait_z_m, contact }: Trace, clearance_m: readonly number[]): number[] {
  let takeOffZ_m = -Infinity;
  return bait_z_m.map((z, i) => {
    if (contact[i] === 1) takeOffZ_m = z;
    return Math.max(0, riseOver(clearance_m[i], z, takeOffZ_m));
  });
}

/** The felt signal for a plot: its lowest and highest within each tick, N. */
export interface FeltBand {
  readonly low_N: readonly number[];
  readonly high_N: readonly number[];
}

export function feltBandOf(setup: Setup, trace: Trace): FeltBand {
  const signal = feltSignal(setup, trace);
  const samples = signal.length / Math.max(trace.t_s.length - 1, 1);
  const low_N = [0];
  const high_N = [0];
  for (let i = 1; i < trace.t_s.length; i++) {
    const tick = signal.subarray((i - 1) * samples, i * samples);
    low_N.push(Math.min(...tick));
    high_N.push(Math.max(...tick));
  }
  return { low_N, high_N };
}

/** What the tip has done at each tick; its travel at the last is the scoring room's tipTravel. */
export function tipSeriesOf({
  t_s,
  tip_x_m: x,
  tip_z_m: z
}: Trace): Pick<Series, 'tipTravel_m' | 'tipOff_m' | 'tipTime_s'> {
  let [first, last, way_m] = [0, 0, 0];
  const tipTime_s: number[] = [];
  const tipTravel_m = x.map((_, i) => {
    const step = Math.hypot(x[i] - x[last], z[i] - z[last]);
    const isStep = step >= DIVIDERS_M;
    if (isStep) {
      way_m += step;
      last = i;
      first ||= i;
    }
    tipTime_s.push(t_s[last] - t_s[first]);
    return isStep ? way_m : way_m + step;
  });
  return {
    tipTravel_m,
    tipTime_s,
    tipOff_m: x.map((_, i) => Math.hypot(x[i] - x[0], z[i] - z[0]))
  };
}

/** When everything has come to rest, s: the hold after it need not be watched. */
export function restsAt(trace: Trace): number {
  const end = trace.t_s.length - 1;
  const hasMoved = (i: number) =>
    Math.hypot(trace.bait_x_m[i] - trace.bait_x_m[end], trace.bait_z_m[i] - trace.bait_z_m[end]) >
      MOVED_M ||
    Math.hypot(trace.tip_x_m[i] - trace.tip_x_m[end], trace.tip_z_m[i] - trace.tip_z_m[end]) >
      MOVED_M;
  let i = end;
  while (i > 0 && !hasMoved(i)) i--;
  return Math.min(trace.t_s[i] + AFTERGLOW_S, trace.t_s[end]);
}

/** Stretches of time in which the bait was clear of the bottom, s. */
export function flightsOf({ t_s, contact }: Pick<Series, 't_s' | 'contact'>): [number, number][] {
  const flights: [number, number][] = [];
  contact.forEach((touches, i) => {
    if (touches === 1) return;
    if (i === 0 || contact[i - 1] === 1) flights.push([t_s[i], t_s[i]]);
    flights[flights.length - 1][1] = t_s[Math.min(i + 1, t_s.length - 1)];
  });
  return flights;
}
