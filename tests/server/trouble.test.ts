import { sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { runtime } from '../../src/lib/server/runtime';
import { newToken } from '../../src/lib/server/token';
import { Refused } from '../../src/lib/connection/ask';
import { deliver } from '../../src/lib/connection/outbox';
import type { HomeworkEntry } from '../../src/lib/app/homework/homework-store';
import { ask, load, newGuide, newHomework, shareOf, withStore } from './endpoints';
import { evenHand, sampleChallenge } from './samples';

withStore();

const pragma = async (text: string) =>
  (await sql.raw<Record<string, number>>(`pragma ${text}`).execute((await runtime()).store.db))
    .rows;

/** Room for no more than one page, as on a disk that is full; and room again. */
const full = {
  what: 'a full disk',
  status: 507,
  async begin() {
    const [{ page_count }] = await pragma('page_count');
    await pragma(`max_page_count = ${page_count}`);
  },
  end: () => pragma('max_page_count = 1000000')
};
const readOnly = {
  what: 'a read-only file',
  status: 503,
  begin: () => pragma('query_only = 1'),
  end: () => pragma('query_only = 0')
};

describe.each([full, readOnly])('on $what', ({ status, begin, end }) => {
  test('a phone is told so, keeps what it did, and is rid of it when there is room', async () => {
    const { jar } = await newGuide('Reed');
    const id = await newHomework(jar);
    const key = { share: await shareOf(jar, id), token: newToken() };
    await ask('/api/homework/enter', { body: { ...key, name: 'Ina' } });
    const entries = Array.from({ length: 12 }, (): HomeworkEntry => {
      const input = evenHand(sampleChallenge, 9, 5);
      const of = { challenge: sampleChallenge.id, input, model: '1', marks: 1 };
      const sent = { kind: 'try' as const, id: newToken(), at: '2031-05-01T08:00:00.000Z', ...of };
      return { share: key.share, sent, state: 'waiting' };
    });
    const said: number[] = [];
    const send = async (sent: unknown) => {
      const { status, body } = await ask('/api/homework/send', { body: { ...key, sent } });
      said.push(status);
      if (status !== 200) throw new Refused(status, JSON.parse(body).error);
    };

    const next = () => entries.find(({ state }) => state === 'waiting');
    const settle = (entry: HomeworkEntry) => {
      entries[entries.findIndex(({ sent }) => sent.id === entry.sent.id)] = entry;
    };

    await begin();
    await deliver(next, send, settle);
    expect(said.at(-1)).toBe(status);
    expect(entries.map(({ state }) => state)).toContain('waiting');
    expect(entries.map(({ state }) => state)).not.toContain('refused');
    // What was taken before the disk was full can still be read.
    expect(await load('/guide/[id]', { jar, params: { id } })).toMatchObject({ status: 200 });

    await end();
    await deliver(next, send, settle);
    expect(new Set(entries.map(({ state }) => state))).toEqual(new Set(['taken']));
    const page = await load('/guide/[id]', { jar, params: { id } });
    const { briefs, standings } = JSON.parse(page.body);
    expect(briefs[standings[0].id].challenges[0].tries).toBe(entries.length);
  });
});
