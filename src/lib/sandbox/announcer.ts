/** What a screen reader is told goes out at most once a second; the newest wins. */
const LEAST_GAP_MS = 1000;

export class Announcer {
  private next: string | null = null;
  private isFleeting = false;
  private said_ms = -Infinity;
  private struck_ms = -Infinity;

  constructor(private readonly say: (text: string) => void) {}

  /** Whether something is still to be said. */
  get isWaiting(): boolean {
    return this.next !== null;
  }

  /**
   * @param isFleeting whether it is over at once, as a knock is: it waits for nothing that lasts, and
   * nothing that lasts takes its place
   */
  tell(text: string, isFleeting = false): void {
    if (this.next !== null && this.isFleeting && !isFleeting) return;
    this.next = text;
    this.isFleeting = isFleeting;
  }

  /** Says what is waiting, if the last word was long enough ago. */
  flush(now_ms: number): void {
    const before_ms = this.isFleeting ? this.struck_ms : this.said_ms;
    if (this.next === null || now_ms - before_ms < LEAST_GAP_MS) return;
    this.say(this.next);
    this.next = null;
    this.said_ms = now_ms;
    if (this.isFleeting) this.struck_ms = now_ms;
    this.isFleeting = false;
  }
}
