import { contactBeside, liftsOf, type Lift, type Trace } from '$lib/model';

/** When a run's bait is shown off the bottom: what trail, mark, plots and figures take it from. */
export interface ShownLifts {
  readonly lifts: readonly Lift[];
  /** 0 in a tick of theirs, 1 in any other. */
  readonly contact: readonly (0 | 1)[];
}

const known = new WeakMap<Trace, ShownLifts>();

/** Looked for once in a trace, and again once it has grown: pictures ask for it in every frame. */
export function shownLifts(trace: Trace, heightAt: (x_m: number) => number): ShownLifts {
  const before = known.get(trace);
  if (before?.contact.length === trace.contact.length) return before;
  const lifts = liftsOf(trace, heightAt);
  const now = { lifts, contact: contactBeside(trace.contact.length, lifts) };
  known.set(trace, now);
  return now;
}
