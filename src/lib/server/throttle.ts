export interface Paced {
  /** How long the first call after a quiet time waits for others to come along, ms. */
  gather_ms: number;
  /** From the end of one run to the start of the next at least, ms. */
  every_ms: number;
}

/**
 * Runs the same work soon after it is first wanted, and then only so often, one run after the other.
 * What is wanted while it runs is done by another run: the last one always begins after the last want.
 */
export class Throttle {
  #timer: NodeJS.Timeout | undefined;
  #isRunning = false;
  #isWanted = false;
  #isStopped = false;
  #ended_ms = -Infinity;

  constructor(
    private readonly work: () => Promise<void>,
    private readonly paced: Paced
  ) {}

  want(): void {
    this.#isWanted = true;
    if (this.#isRunning || this.#isStopped) return;
    const { gather_ms, every_ms } = this.paced;
    const due_ms = this.#ended_ms + every_ms - performance.now();
    this.#timer ??= setTimeout(() => void this.#run(), Math.max(gather_ms, due_ms));
  }

  stop(): void {
    this.#isStopped = true;
    clearTimeout(this.#timer);
  }

  async #run(): Promise<void> {
    this.#timer = undefined;
    this.#isWanted = false;
    this.#isRunning = true;
    await this.work().catch(() => {});
    this.#isRunning = false;
    this.#ended_ms = performance.now();
    if (this.#isWanted) this.want();
  }
}
