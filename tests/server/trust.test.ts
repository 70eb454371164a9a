import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { AddressLimit } from '../../src/lib/server/address-limit';
import { networkOf } from '../../src/lib/server/code-guard';
import { isFromElsewhere } from '../../src/lib/server/elsewhere';
import { storeTrouble } from '../../src/lib/server/faults';
import { RateLimiter } from '../../src/lib/server/rate-limit';
import { storeOfFile } from '../../src/lib/server/sqlite-store';
import { openStore } from '../../src/lib/server/store';
import { accept } from '../../src/lib/server/submissions';
import { hashToken, newToken, seal, shareToken, unseal } from '../../src/lib/server/token';
import { sqlite } from './stores';

describe('tokens', () => {
  test('have 128 bits or more and never come twice', () => {
    const tokens = new Set(Array.from({ length: 500 }, newToken));
    expect(tokens.size).toBe(500);
    for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(24);
  });

  test('what is sealed opens with its token only', () => {
    const [token, other] = [newToken(), newToken()];
    const sealed = seal('share key', token);
    expect(unseal(sealed, token)).toBe('share key');
    expect(() => unseal(sealed, other)).toThrow();
    expect(sealed).not.toContain('share');
  });

  test('each homework has its own link, and the hash does not give it away', () => {
    const key = newToken();
    expect(shareToken(key, 'a')).not.toBe(shareToken(key, 'b'));
    expect(hashToken(shareToken(key, 'a'))).not.toContain(shareToken(key, 'a'));
  });
});

describe('a request that changes something', () => {
  const sent = (headers: Record<string, string>, method = 'POST') =>
    isFromElsewhere(
      new Request('http://localhost:3000/api/guide/secret', { method, headers }),
      HERE
    );
  const HERE = 'localhost:3000';

  test.each<Record<string, string>>([
    { origin: 'http://localhost:9999' },
    { origin: 'https://elsewhere.example' },
    { origin: 'null' },
    { origin: 'http://localhost:3000', 'sec-fetch-site': 'same-site' },
    { origin: 'http://localhost:9999', 'content-type': 'text/plain' },
    { origin: 'http://localhost:9999', 'content-type': 'application/json' },
    { 'sec-fetch-site': 'cross-site' }
  ])('is refused from another page: %o', (headers) => {
    expect(sent(headers)).toBe(true);
    expect(sent(headers, 'DELETE')).toBe(true);
    expect(sent(headers, 'GET')).toBe(false);
  });

  test.each<Record<string, string>>([
    {},
    { origin: 'http://localhost:3000' },
    { origin: 'https://localhost:3000' },
    { origin: 'http://localhost:3000', 'sec-fetch-site': 'same-origin' },
    { origin: 'null', 'content-type': 'application/json' }
  ])('is taken from a page of ours and from a program: %o', (headers) => {
    expect(sent(headers)).toBe(false);
  });
});

test.each([
  ['192.0.2.7', '192.0.2.7'],
  ['::ffff:192.0.2.7', '192.0.2.7'],
  ['2001:db8:0:5:1:2:3:4', '2001:db8:0:5'],
  ['2001:db8:0:5::9', '2001:db8:0:5'],
  ['2001:DB8::5:1:2:3:4', '2001:db8:0:5'],
  ['::1', '0:0:0:0']
])('%s counts as %s: who has a network of addresses has one to guess from', (address, network) => {
  expect(networkOf(address)).toBe(network);
});

describe('limits of strangers', () => {
  const limit = () =>
    new AddressLimit({
      each: { burst: 2, perMinute: 0 },
      block: { burst: 5, perMinute: 0 },
      all: { burst: 8, perMinute: 60 }
    });
  /** How many of twenty get through, each from the next address. */
  const through = (limited: AddressLimit, addressOf: (i: number) => string) =>
    Array.from({ length: 20 }, (_, i) => limited.take(networkOf(addressOf(i)), 0)).filter(Boolean)
      .length;

  test('go by address, by a rented machine’s networks together, and by all together', () => {
    expect(through(limit(), () => '192.0.2.7')).toBe(2);
    expect(through(limit(), (i) => `2001:db8:7:${i.toString(16)}::1`)).toBe(5);
    expect(through(limit(), (i) => `2001:db8:${i.toString(16)}::1`)).toBe(8);
    expect(through(limit(), (i) => `192.0.2.${i}`)).toBe(8);
  });

  test('what one block has spent, another still has', () => {
    const limited = limit();
    expect(through(limited, (i) => `2001:db8:7:${i.toString(16)}::1`)).toBe(5);
    expect(limited.take(networkOf('2001:db8:8::1'), 0)).toBe(true);
  });
});

describe('limits', () => {
  test('are by key: a room behind one address is not one phone', () => {
    const limiter = new RateLimiter({ burst: 2, perMinute: 60 });
    const phones = Array.from({ length: 500 }, (_, i) => `phone ${i}`);
    expect(phones.every((phone) => limiter.take(phone, 0))).toBe(true);
    expect([limiter.take('phone 7', 0), limiter.take('phone 7', 0)]).toEqual([true, false]);
    expect(limiter.take('phone 7', 1000)).toBe(true);
  });
});

describe('a store that cannot write says so and loses nothing', () => {
  const sent = (id: string) => ({
    scope: 'c',
    id,
    parent: 'p',
    part: 'q',
    payload: 'x'.repeat(20_000)
  });

  async function withFile(break_: (file: Database.Database) => void, readonly = false) {
    const server = await sqlite.start();
    const place = await server.fresh();
    const healthy = await openStore(place);
    await accept(healthy.db, sent('before'), 'now', () => 'yes');
    await healthy.close();
    const file = new Database(`${place.folder}/feltfoot.sqlite`, { readonly });
    break_(file);
    const store = storeOfFile(file);
    const errors: unknown[] = [];
    for (let i = 0; i < 40 && errors.length === 0; i++) {
      await accept(store.db, sent(`after ${i}`), 'now', () => 'yes').catch((e) => errors.push(e));
    }
    const again = await accept(store.db, sent('before'), 'now', () => 'no');
    await store.close();
    await server.stop();
    return { trouble: storeTrouble(errors[0]), again };
  }

  test('on a full disk', async () => {
    const { trouble, again } = await withFile((file) => {
      file.pragma(`max_page_count = ${Number(file.pragma('page_count', { simple: true })) + 8}`);
    });
    expect(trouble).toMatchObject({
      status: 507,
      message: expect.stringContaining('disk is full')
    });
    expect(again).toEqual({ kind: 'repeated', reply: '"yes"' });
  });

  test('on a read-only file', async () => {
    const { trouble, again } = await withFile(() => {}, true);
    expect(trouble).toMatchObject({
      status: 503,
      message: expect.stringContaining('can’t save right now')
    });
    expect(again).toEqual({ kind: 'repeated', reply: '"yes"' });
  });

  test('and an error of ours is not taken for one of the store’s', () => {
    expect(storeTrouble(new TypeError('x'))).toBeUndefined();
  });
});
