/** Calls `frame` once a screen refresh for as long as it returns true; `wake` sets it going again. */
export class FrameLoop {
  private request = 0;
  private last_ms: number | null = null;

  /** `frame` gets the time now and the time since the frame before, ms (0 after a rest). */
  constructor(private readonly frame: (now_ms: number, elapsed_ms: number) => boolean) {}

  wake(): void {
    if (this.request === 0) this.request = requestAnimationFrame(this.run);
  }

  stop(): void {
    cancelAnimationFrame(this.request);
    this.request = 0;
    this.last_ms = null;
  }

  private run = (now_ms: number): void => {
    this.request = 0;
    const elapsed_ms = this.last_ms === null ? 0 : now_ms - this.last_ms;
    this.last_ms = now_ms;
    if (this.frame(now_ms, elapsed_ms)) this.wake();
    else this.last_ms = null;
  };
}
