import { isIPv6 } from 'node:net';
import { AddressLimit } from './address-limit';

/** More pairs of address and code are forgotten, oldest first. */
const MOST_KNOWN = 50_000;

/**
 * Against guessing a clinic's code, which is short. Wrong ones cost the address they come from. One
 * that has spent all is heard only with codes that were good from there before: so whoever types
 * hundreds of wrong ones in a hall shuts out nobody but their own guesses, and everybody else there
 * still joins and votes.
 */
export class CodeGuard {
  /**
   * A full room gets in at once, and so does one in which every second phone mistypes. Who guesses
   * through a clinic's twelve hours has tried a ten-thousandth of the codes; all who guess together a
   * hundredth.
   */
  readonly #wrong = new AddressLimit({
    each: { burst: 300, perMinute: 60 },
    block: { burst: 1000, perMinute: 200 },
    all: { burst: 20_000, perMinute: 6000 }
  });
  readonly #known = new Set<string>();

  mayTry(address: string, code: string, now_ms: number): boolean {
    return this.#wrong.has(address, now_ms) || this.#known.has(pairOf(address, code));
  }

  wasWrong(address: string, now_ms: number): void {
    this.#wrong.take(address, now_ms);
  }

  /** Also said by the guide's screen, before the first phone comes. */
  wasRight(address: string, code: string): void {
    const pair = pairOf(address, code);
    this.#known.delete(pair);
    this.#known.add(pair);
    if (this.#known.size <= MOST_KNOWN) return;
    // A Set keeps the order, so the first is the one longest unused.
    for (const oldest of this.#known) return void this.#known.delete(oldest);
  }
}

const pairOf = (address: string, code: string) => `${address} ${code}`;

/**
 * What counts as one address: of IPv6 the network, since a household or a rented machine has all
 * of its 2^64 addresses to choose from.
 */
export function networkOf(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped || !isIPv6(address)) return mapped ?? address;
  const [front, back = ''] = address.split('::').map((half) => half.split(':').filter(Boolean));
  const zeros = Math.max(0, 8 - front.length - back.length);
  const groups = [...front, ...Array.from({ length: zeros }, () => '0'), ...back];
  return groups
    .slice(0, 4)
    .map((group) => parseInt(group, 16).toString(16))
    .join(':');
}
