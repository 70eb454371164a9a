import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStore, type Store, type StorePlace } from '../../src/lib/server/store';
import { accept, type Receipt } from '../../src/lib/server/submissions';
import { storeKinds } from './stores';

const NOW = '2031-05-01T08:00:00.000Z';

interface Message {
  scope: string;
  id: string;
  payload: number;
}

/** `pick` chooses among what there is at that moment. */
type Step =
  | { do: 'make'; phone: string; payload: number }
  /** A phone sends again what it has not heard of: a duplicate, perhaps long after. */
  | { do: 'send again'; pick: number }
  /** Any message on its way arrives, so in any order; its reply may get lost. */
  | { do: 'arrive'; pick: number; isReplyLost: boolean }
  | { do: 'drop'; pick: number }
  /** The same id comes with something else in it. */
  | { do: 'forge'; pick: number; payload: number }
  | { do: 'restart' };

const pick = fc.nat(1000);
const payload = fc.nat(3);
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('make' as const),
      phone: fc.constantFrom('ann', 'bo'),
      payload
    })
  },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('send again' as const), pick }) },
  {
    weight: 8,
    arbitrary: fc.record({ do: fc.constant('arrive' as const), pick, isReplyLost: fc.boolean() })
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('drop' as const), pick }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('forge' as const), pick, payload }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('restart' as const) }) }
);

const keyOf = ({ scope, id }: { scope: string; id: string }) => `${scope} ${id}`;

/** Phones that keep what they made until it is acknowledged, a network that does what networks do. */
class World {
  readonly outbox = new Map<string, Message>();
  readonly onTheWay: Message[] = [];
  /** What the server must hold: the first of each id, with what was answered to it. */
  readonly first = new Map<string, { payload: number; reply: string }>();
  readonly #sent: Message[] = [];
  #answered = 0;

  constructor(
    readonly parent: string,
    private readonly store: () => Store,
    private readonly restart: () => Promise<void>
  ) {}

  async take(one: Step): Promise<void> {
    if (one.do === 'restart') return this.restart();
    if (one.do === 'make') return this.#make(one.phone, one.payload);
    const waiting = [...this.outbox.values()];
    if (one.do === 'send again') {
      if (waiting.length) this.onTheWay.push(waiting[one.pick % waiting.length]);
      return;
    }
    if (one.do === 'forge') {
      // Only what is known can be told from its first.
      const known = this.#sent.filter((message) => this.first.has(keyOf(message)));
      if (known.length === 0) return;
      return this.#arrive({ ...known[one.pick % known.length], payload: one.payload }, true);
    }
    if (this.onTheWay.length === 0) return;
    const at = one.pick % this.onTheWay.length;
    const [message] = this.onTheWay.splice(at, 1);
    if (one.do === 'arrive') await this.#arrive(message, one.isReplyLost);
  }

  /** The network is well again: every phone gets rid of what it has. */
  async settle(): Promise<void> {
    for (const message of [...this.onTheWay, ...this.outbox.values()]) {
      await this.#arrive(message, false);
    }
  }

  get made(): number {
    return this.#sent.length;
  }

  #make(phone: string, payload: number): void {
    const message = { scope: `${this.parent} ${phone}`, id: `try ${this.made}`, payload };
    this.#sent.push(message);
    this.outbox.set(keyOf(message), message);
    this.onTheWay.push(message);
  }

  async #arrive(message: Message, isReplyLost: boolean): Promise<void> {
    const known = this.first.get(keyOf(message));
    const reply = JSON.stringify(this.#answered);
    const sent = { ...message, parent: this.parent, part: 'p' };
    const got = await accept(this.store().db, sent, NOW, () => this.#answered++);
    expect(got).toEqual(expectedReceipt(known, message.payload, reply));
    if (!known) this.first.set(keyOf(message), { payload: message.payload, reply });
    if (!isReplyLost) this.outbox.delete(keyOf(message));
  }
}

function expectedReceipt(
  known: { payload: number; reply: string } | undefined,
  payload: number,
  reply: string
): Receipt {
  if (!known) return { kind: 'accepted', reply };
  return known.payload === payload
    ? { kind: 'repeated', reply: known.reply }
    : { kind: 'conflict' };
}

describe.each(storeKinds)('the protocol of submissions on $name', (kind) => {
  const suite = kind.missing ? describe.skip : describe;
  suite('that can be had', () => {
    let server: Awaited<ReturnType<typeof kind.start>>;
    let place: StorePlace;
    let store: Store;
    beforeAll(async () => {
      server = await kind.start();
      place = await server.fresh();
      store = await openStore(place);
    });
    afterAll(async () => {
      await store?.close();
      await server?.stop();
    });

    async function restart(): Promise<void> {
      await store.close();
      store = await openStore(place);
    }

    test('duplicated, dropped, reordered, forged, across restarts: each counts once', async () => {
      let round = 0;
      await fc.assert(
        fc.asyncProperty(fc.array(step, { maxLength: 40 }), async (steps) => {
          const world = new World(`round ${round++}`, () => store, restart);
          for (const one of steps) await world.take(one);
          await world.settle();
          const rows = await store.db
            .selectFrom('submissions')
            .select(['scope', 'id', 'payload', 'reply'])
            .where('parent', '=', world.parent)
            .execute();
          const stored = rows.map(
            (row) => [keyOf(row), { payload: Number(row.payload), reply: row.reply }] as const
          );
          expect(rows).toHaveLength(world.made);
          expect(new Map(stored)).toEqual(world.first);
          expect(world.outbox.size).toBe(0);
        }),
        { numRuns: 60, seed: 6 }
      );
    });
  });
});
