import { RateLimiter, type RateLimit } from './rate-limit';

/**
 * Limits what strangers do by their address, by the block that it is of, and in all: who rents a machine
 * gets 65,536 networks of IPv6 along, and who has many machines has as many addresses.
 */
export class AddressLimit {
  readonly #each: RateLimiter;
  readonly #block: RateLimiter;
  readonly #all: RateLimiter;

  constructor(limits: { each: RateLimit; block: RateLimit; all: RateLimit }) {
    this.#each = new RateLimiter(limits.each);
    this.#block = new RateLimiter(limits.block);
    this.#all = new RateLimiter(limits.all);
  }

  /** Takes one from each of the three. @returns false, and takes none, where one of them has none left */
  take(network: string, now_ms: number): boolean {
    if (!this.has(network, now_ms)) return false;
    return (
      this.#each.take(network, now_ms) &&
      this.#block.take(blockOf(network), now_ms) &&
      this.#all.take('', now_ms)
    );
  }

  has(network: string, now_ms: number): boolean {
    return (
      this.#each.left(network, now_ms) >= 1 &&
      this.#block.left(blockOf(network), now_ms) >= 1 &&
      this.#all.left('', now_ms) >= 1
    );
  }
}

/** Of IPv6 the first 48 bits, the most that a household or a rented machine is given; else the address. */
function blockOf(network: string): string {
  return network.includes(':') ? network.split(':').slice(0, 3).join(':') : network;
}
