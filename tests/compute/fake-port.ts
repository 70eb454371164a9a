import type { JobRequest, HostPort, Told } from '../../src/lib/compute/messages';
import { serve } from '../../src/lib/compute/serve';

/** A thread that a test holds the strings of: what goes through is copied, as between two threads. */
export class FakePort implements HostPort {
  readonly asked: JobRequest[] = [];
  /** All that the working side said, heard or not. */
  readonly said: Told[] = [];
  isClosed = false;
  private hear: (told: Told) => void = () => {};
  private ended: () => void = () => {};
  private toWorker: (asked: JobRequest) => void = () => {};

  /** Begins to work, the slowest way there is: it lets go whenever it can. */
  work(): void {
    serve(
      {
        post: (told) => {
          this.said.push(told);
          this.hear(structuredClone(told));
        },
        onmessage: (hear) => (this.toWorker = hear)
      },
      { slice_ms: 0, breathe: () => new Promise((next) => setImmediate(next)) }
    );
    this.asked.forEach((one) => this.toWorker(one));
  }

  post(asked: JobRequest): void {
    const copied = structuredClone(asked);
    this.asked.push(copied);
    this.toWorker(copied);
  }

  onmessage(hear: (told: Told) => void): void {
    this.hear = hear;
  }

  onend(ended: () => void): void {
    this.ended = ended;
  }

  close(): void {
    this.isClosed = true;
  }

  /** Says something of its own. */
  tell(told: Told): void {
    this.hear(told);
  }

  /** Breaks off, as a thread that ran out of memory. */
  end(): void {
    this.ended();
  }
}
