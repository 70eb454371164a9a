import { compute } from '$lib/compute/browser';
import type { RunFigures } from '$lib/compute/jobs/figures';
import { exploredScenario, valuesOn, type Axis, type ExploreBase } from './axes';

export interface ChartPoint {
  at: number;
  figures: RunFigures;
  /** Give or take; null where it has not been worked out. */
  half: RunFigures | null;
}

/** So many runs are asked for at once: more would hold a change up. */
const AT_ONCE = 9;

/** A chart as it gets finer; another one asked for ends it. */
export class ChartRun {
  /** By value. */
  points = $state.raw<readonly ChartPoint[]>([]);
  isDone = $state(true);
  #stop: AbortController | null = null;

  async start(base: ExploreBase, axis: Axis): Promise<void> {
    this.cancel();
    const stop = (this.#stop = new AbortController());
    this.isDone = false;
    const { first, finer } = valuesOn(axis);
    const batches = [
      { values: first, isBanded: false },
      { values: finer.slice(0, AT_ONCE), isBanded: false },
      { values: finer.slice(AT_ONCE), isBanded: false },
      ...first.map((value) => ({ values: [value], isBanded: true }))
    ];
    let points: ChartPoint[] = [];
    for (const { values, isBanded } of batches) {
      const scenarios = values.map((value) => exploredScenario(axis.set(base, value)));
      const unknowns = isBanded ? (base.spread ?? 'slack and drag') : undefined;
      let made;
      try {
        made = await compute.ask('figures', { scenarios, unknowns }, { signal: stop.signal });
      } catch (error) {
        if (stop.signal.aborted) return;
        throw error;
      }
      const fresh = values.flatMap((at, i) => (made[i] ? [{ at, ...made[i] }] : []));
      const others = points.filter(({ at }) => !values.includes(at));
      points = [...others, ...fresh].sort((a, b) => a.at - b.at);
      this.points = points;
    }
    this.isDone = true;
  }

  cancel(): void {
    this.#stop?.abort();
    this.#stop = null;
  }
}
