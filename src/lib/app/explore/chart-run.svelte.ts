import { compute } from '$lib/compute/browser';
import type { ChartPoint, ChartWanted, Curve } from './chart';
import { curvesOf, stagesOf } from './curves';

/** A chart as it gets finer; another one asked for ends it. */
export class ChartRun {
  curves = $state.raw<readonly Curve[]>([]);
  isDone = $state(true);
  #stop: AbortController | null = null;

  async start(wanted: ChartWanted): Promise<void> {
    this.cancel();
    const stop = (this.#stop = new AbortController());
    const { signal } = stop;
    this.isDone = false;
    const curves = curvesOf(wanted);
    try {
      for (const { curve, make } of stagesOf(wanted, curves)) {
        const fresh = await make((job, given) => compute.ask(job, given, { signal }));
        const { points } = curves[curve];
        curves[curve] = { ...curves[curve], points: withPoints(points, fresh) };
        this.curves = [...curves];
      }
    } catch (error) {
      if (signal.aborted) return;
      throw error;
    }
    this.isDone = true;
  }

  cancel(): void {
    this.#stop?.abort();
    this.#stop = null;
  }
}

/** What is finer stands for what was there before. */
export function withPoints(
  points: readonly ChartPoint[],
  fresh: readonly ChartPoint[]
): ChartPoint[] {
  const isOld = ({ at }: ChartPoint) => !fresh.some((one) => one.at === at);
  return [...points.filter(isOld), ...fresh].sort((a, b) => a.at - b.at);
}
