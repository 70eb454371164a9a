/** A bucket of so many, filled again at so many a minute. */
export interface RateLimit {
  burst: number;
  perMinute: number;
}

/** More keys than this are forgotten, fullest first, so that strangers cannot fill the memory. */
const MOST_KEYS = 50_000;
const MINUTE_MS = 60_000;

/**
 * Token buckets by key. A room full of phones comes from one address, so what a phone does is limited
 * by its own token; by address only what strangers do: opening spaces, guessing codes.
 */
export class RateLimiter {
  readonly #buckets = new Map<string, { left: number; at_ms: number }>();

  constructor(private readonly limit: RateLimit) {}

  /** Takes one. @returns false when none is left */
  take(key: string, now_ms: number): boolean {
    const left = this.left(key, now_ms);
    if (left < 1) return false;
    this.#put(key, left - 1, now_ms);
    return true;
  }

  left(key: string, now_ms: number): number {
    const bucket = this.#buckets.get(key);
    if (!bucket) return this.limit.burst;
    const filled = ((now_ms - bucket.at_ms) / MINUTE_MS) * this.limit.perMinute;
    return Math.min(this.limit.burst, bucket.left + Math.max(0, filled));
  }

  #put(key: string, left: number, at_ms: number): void {
    this.#buckets.delete(key);
    this.#buckets.set(key, { left, at_ms });
    if (this.#buckets.size <= MOST_KEYS) return;
    // A Map keeps the order of use, so the first is the one longest unused.
    const oldest = this.#buckets.keys().next().value;
    if (oldest !== undefined) this.#buckets.delete(oldest);
  }
}
