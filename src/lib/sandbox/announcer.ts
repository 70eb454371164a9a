/** What a screen reader is told goes out at most once a second; the newest wins. */
const LEAST_GAP_MS = 1000;

export class Announcer {
  private next: string | null = null;
  private said_ms = -Infinity;

  constructor(private readonly say: (text: string) => void) {}

  /** Whether something is still to be said. */
  get isWaiting(): boolean {
    return this.next !== null;
  }

  tell(text: string): void {
    this.next = text;
  }

  /** Says what is waiting, if the last word was long enough ago. */
  flush(now_ms: number): void {
    if (this.next === null || now_ms - this.said_ms < LEAST_GAP_MS) return;
    this.say(this.next);
    this.next = null;
    this.said_ms = now_ms;
  }
}
