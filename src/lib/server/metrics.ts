/** Upper bounds of the buckets of answering times, s. */
const BOUNDS_S = [0.005, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2.5];

/** Counters of this process, written as the Prometheus text format 0.0.4 wants them. */
export class Metrics {
  readonly #counts = new Map<string, number>();
  readonly #buckets = BOUNDS_S.map(() => 0);
  #total_s = 0;
  #answers = 0;
  readonly #gauges = new Map<string, () => number>();

  /** @param name of ours, with its labels: `submissions_total{kind="accepted"}` */
  count(name: string): void {
    this.#counts.set(name, (this.#counts.get(name) ?? 0) + 1);
  }

  gauge(name: string, read: () => number): void {
    this.#gauges.set(name, read);
  }

  answered(status: number, took_s: number): void {
    this.count(`answers_total{status="${Math.floor(status / 100)}xx"}`);
    BOUNDS_S.forEach((bound, i) => {
      if (took_s <= bound) this.#buckets[i]++;
    });
    this.#total_s += took_s;
    this.#answers++;
  }

  toText(): string {
    const counts = [...this.#counts].map(([name, value]) => `feltfoot_${name} ${value}`);
    const gauges = [...this.#gauges].map(([name, read]) => `feltfoot_${name} ${read()}`);
    return `${[...counts, ...gauges, ...this.#histogram()].join('\n')}\n`;
  }

  #histogram(): string[] {
    const name = 'feltfoot_answer_seconds';
    return [
      ...BOUNDS_S.map((bound, i) => `${name}_bucket{le="${bound}"} ${this.#buckets[i]}`),
      `${name}_bucket{le="+Inf"} ${this.#answers}`,
      `${name}_sum ${this.#total_s}`,
      `${name}_count ${this.#answers}`
    ];
  }
}
