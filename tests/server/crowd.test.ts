import { sql } from 'kysely';
import { beforeAll, describe, expect, test } from 'vitest';
import { newCode } from '../../src/lib/server/room-code';
import { runtime } from '../../src/lib/server/runtime';
import { newToken } from '../../src/lib/server/token';
import { ask, load, newClinic, newGuide, withStore } from './endpoints';
import type { Jar } from './events';

withStore();

const PHONES = 500;
const HALL = '198.51.100.1';
const ELSEWHERE = '203.0.113.9';

describe('a hall of five hundred phones behind one address', () => {
  let jar: Jar;
  let clinic: Awaited<ReturnType<typeof newClinic>>;
  const tokens = Array.from({ length: PHONES }, newToken);
  beforeAll(async () => {
    // Limits are tested here, not the disk.
    await sql`pragma synchronous = off`.execute((await runtime()).store.db);
    ({ jar } = await newGuide('Reed'));
    clinic = await newClinic(jar);
  });

  const join = (token: string, code: string, address: string) =>
    ask('/api/clinic/[code]/join', { body: { token }, params: { code }, address });

  test('one address cannot take the seats of a whole room, nor those of another address', async () => {
    const { code } = await newClinic(jar);
    const enter = async (address: string) => (await join(newToken(), code, address)).status;
    const statuses: number[] = [];
    for (let i = 0; i < 1000; i++) statuses.push(await enter(ELSEWHERE));
    const taken = statuses.filter((status) => status === 200).length;
    expect(taken).toBeGreaterThan(PHONES);
    // Within the seconds that this takes a few more come free.
    expect(taken).toBeLessThan(900);
    expect(new Set(statuses)).toEqual(new Set([200, 429]));
    expect(await enter(HALL)).toBe(200);
  });

  /** Tries codes until it is stopped. @returns how many it could try */
  async function guess(address: string): Promise<number> {
    for (let tried = 0; tried < 2 * PHONES; tried++) {
      const { status } = await join(newToken(), newCode(), address);
      if (status === 429) return tried;
      expect(status).toBe(404);
    }
    return Infinity;
  }

  test('gets in and votes, every third with a code mistyped first, while a guesser is stopped', async () => {
    expect(await guess(ELSEWHERE)).toBeLessThanOrEqual(310);
    // The right code is no way round for who has guessed too often.
    expect(await join(newToken(), clinic.code, ELSEWHERE)).toMatchObject({ status: 429 });
    const entered = tokens.map(async (token, i) => {
      if (i % 3 === 0) await join(token, newCode(), HALL);
      return (await join(token, clinic.code, HALL)).status;
    });
    expect(new Set(await Promise.all(entered))).toEqual(new Set([200]));

    const { part, shown } = clinic.view;
    const voted = tokens.map(async (token, i) => {
      const option = shown.options[i % shown.options.length].id;
      const answer = { kind: 'vote', id: newToken(), part, option };
      const body = { token, answer };
      const params = { code: clinic.code };
      return (await ask('/api/clinic/[code]/answer', { body, params, address: HALL })).status;
    });
    expect(new Set(await Promise.all(voted))).toEqual(new Set([200]));
    const { body } = await load('/clinic/[id]', { jar, params: { id: clinic.id } });
    expect(JSON.parse(body).view.answered).toBe(PHONES);
  });

  test('goes on when somebody in it types wrong codes until none is heard any more', async () => {
    expect(await guess(HALL)).toBeLessThanOrEqual(310);
    expect(await join(newToken(), clinic.code, HALL)).toMatchObject({ status: 200 });
    const params = { code: clinic.code };
    const feed = { method: 'GET', params, address: HALL };
    expect(await ask('/api/clinic/[code]/feed', feed)).toMatchObject({ status: 200 });
    // Another clinic's code is still nothing that can be guessed from here.
    const silt = (await newGuide('Silt')).jar;
    const other = await newClinic(silt);
    // A second is worth one more guess.
    await guess(HALL);
    expect(await join(newToken(), other.code, HALL)).toMatchObject({ status: 429 });
    // Unless its screen stands in this hall.
    const screen = { method: 'GET', jar: silt, params: { id: other.id }, address: HALL };
    expect(await ask('/api/guide/clinic/[id]/feed', screen)).toMatchObject({ status: 200 });
    expect(await join(newToken(), other.code, HALL)).toMatchObject({ status: 200 });
  });

  test('one phone that floods is slowed, and its neighbours are not', async () => {
    const statuses: number[] = [];
    for (let i = 0; i < 200; i++) {
      statuses.push((await join(tokens[0], clinic.code, HALL)).status);
    }
    expect(statuses.at(-1)).toBe(429);
    expect(await join(tokens[1], clinic.code, HALL)).toMatchObject({ status: 200 });
  });
});

test('phones that ask for yesterday’s clinic again and again spend nothing', async () => {
  const { jar } = await newGuide('Reed');
  const [old, next] = [await newClinic(jar), await newClinic(jar)];
  const { db } = (await runtime()).store;
  const ends_at = new Date(0).toISOString();
  await db.updateTable('rooms').set({ ends_at }).where('id', '=', old.id).execute();
  const address = '192.0.2.44';
  const join = (code: string) =>
    ask('/api/clinic/[code]/join', { body: { token: newToken() }, params: { code }, address });
  for (let i = 0; i < 310; i++) expect(await join(old.code)).toMatchObject({ status: 404 });
  expect(await join(next.code)).toMatchObject({ status: 200 });
});

test('spaces from one address are few', async () => {
  const statuses: number[] = [];
  for (let i = 0; i < 30; i++) {
    const { status } = await ask('/api/guide/space', {
      body: { name: 'Silt' },
      address: ELSEWHERE
    });
    statuses.push(status);
  }
  expect(statuses.filter((status) => status === 200).length).toBeLessThanOrEqual(21);
  expect(statuses.at(-1)).toBe(429);
});
