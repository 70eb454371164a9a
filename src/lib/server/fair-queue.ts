/** On whose account work is done: a guide's space, and where the request came from. */
export interface Account {
  space: string;
  address: string;
}

interface Entry<T> {
  account: Account;
  cost_s: number;
  work: T;
}

/** What was used counts half after this, s: a room that was graded a while ago is as good as new. */
const HALF_LIFE_S = 60;
/** More spaces and addresses are forgotten, longest unused first. */
const MOST_KNOWN = 10_000;

/**
 * What waits to be worked out. Next is whose space and address have both had least lately: neither a
 * space with a thousand addresses nor an address with twenty spaces keeps others waiting. When it is
 * full, the newest of whoever asks for most makes way. Times are handed in, s.
 */
export class FairQueue<T> {
  #waiting: Entry<T>[] = [];
  readonly #used = new Map<string, { had_s: number; at_s: number }>();

  constructor(private readonly most_s: number) {}

  get length(): number {
    return this.#waiting.length;
  }

  get waiting_s(): number {
    return sumOf(this.#waiting);
  }

  /** @returns what finds no place any more: what was just handed in, or what made way for it */
  put(account: Account, cost_s: number, work: T, now_s: number): T[] {
    this.#waiting.push({ account, cost_s, work });
    const out: T[] = [];
    while (this.waiting_s > this.most_s) out.push(this.#dropFromHeaviest(now_s));
    return out;
  }

  /** Takes what is next; its cost is on its account from now on. */
  take(now_s: number): Entry<T> | undefined {
    const hads = (one: Entry<T>) => this.#had(one, now_s);
    const [least] = bestOf(this.#waiting, hads, (a, b) => a < b);
    if (!least) return undefined;
    this.remove(least.work);
    this.charge(least.account, least.cost_s, now_s);
    return least;
  }

  remove(work: T): void {
    this.#waiting = this.#waiting.filter((one) => one.work !== work);
  }

  /** Puts time on an account: more than was thought, or less. */
  charge(account: Account, used_s: number, now_s: number): void {
    for (const key of keysOf(account)) {
      const had_s = Math.max(0, this.#left(key, now_s) + used_s);
      this.#used.delete(key);
      this.#used.set(key, { had_s, at_s: now_s });
    }
    for (const oldest of this.#used.keys()) {
      if (this.#used.size <= MOST_KNOWN) return;
      this.#used.delete(oldest);
    }
  }

  #dropFromHeaviest(now_s: number): T {
    const waits = new Map<string, number>();
    for (const { account, cost_s } of this.#waiting) {
      for (const key of keysOf(account)) waits.set(key, (waits.get(key) ?? 0) + cost_s);
    }
    const asks = ({ account }: Entry<T>) =>
      Math.max(...keysOf(account).map((key) => this.#left(key, now_s) + (waits.get(key) ?? 0)));
    // Of several as heavy the newest: who came first is nearest to being done.
    const [heaviest] = bestOf(this.#waiting.toReversed(), asks, (a, b) => a > b);
    this.remove(heaviest.work);
    return heaviest.work;
  }

  #had({ account }: Entry<T>, now_s: number): number {
    return Math.max(...keysOf(account).map((key) => this.#left(key, now_s)));
  }

  #left(key: string, now_s: number): number {
    const { had_s, at_s } = this.#used.get(key) ?? { had_s: 0, at_s: now_s };
    return had_s * 0.5 ** (Math.max(0, now_s - at_s) / HALF_LIFE_S);
  }
}

const keysOf = ({ space, address }: Account) => [`space ${space}`, `address ${address}`];

const sumOf = (all: readonly { cost_s: number }[]) =>
  all.reduce((sum, { cost_s }) => sum + cost_s, 0);

/** The first whose worth no other's is better than, in a list; empty where there is none. */
function bestOf<T>(
  all: readonly T[],
  worthOf: (one: T) => number,
  isBetter: (a: number, b: number) => boolean
): T[] {
  let found: { one: T; worth: number } | undefined;
  for (const one of all) {
    const worth = worthOf(one);
    if (!found || isBetter(worth, found.worth)) found = { one, worth };
  }
  return found ? [found.one] : [];
}
