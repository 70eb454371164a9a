import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { securityHeaders } from '../../server/headers.mjs';
import { codeOf, follow } from '../../scripts/load-clinic';
import { newHomework, tryOf } from '../../scripts/load-homework';
import { openStore } from '../../src/lib/server/store';
import { newToken } from '../../src/lib/server/token';
import { askRaw, sendJson, startServer, type Answer, type Running } from './running';
import { sampleTask } from './samples';

const GUIDE = 'Reed and daughters';
const CLIENT = 'Ina of the reeds';

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-edge-'));
const data = join(folder, 'data');
let server: Running;
let cookie: string;
let opened: Answer;
let clinic: string;
let code: string;
let homework: Awaited<ReturnType<typeof newHomework>>;
const phone = newToken();

beforeAll(async () => {
  // A file where the folder should be: the first who asks for the store meets an unforeseen fault.
  writeFileSync(data, '');
  // As behind a proxy that speaks https.
  server = await startServer({ FELTFOOT_DATA: data, FELTFOOT_PROTOCOL: 'https' });
}, 180_000);
afterAll(async () => {
  await server?.stop('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

const get = (path: string, headers: Record<string, string> = {}) =>
  askRaw(server.base, { path, headers });

test('a fault that nobody foresaw is answered without its words', async () => {
  const fault = await get('/guide');
  expect(fault.status).toBe(500);
  expectHeaders(fault);
  expect(fault.body).toContain('Something went wrong here');
  expect(fault.body).not.toContain(folder);
  rmSync(data);
  mkdirSync(data);
  expect(await get('/guide')).toMatchObject({ status: 200 });
});

describe('with a guide, a clinic and a client', () => {
  beforeAll(async () => {
    opened = await sendJson(server.base, '/api/guide/space', { name: GUIDE });
    cookie = opened.headers['set-cookie']?.[0].split(';')[0] ?? '';
    const made = await sendJson(server.base, '/api/guide/clinic', { minutes: 45 }, cookie);
    clinic = JSON.parse(made.body).id;
    code = await codeOf(server.base, clinic, cookie);
    homework = await newHomework(server.base, cookie);
    const entering = { share: homework.share, token: phone, name: CLIENT };
    expect((await sendJson(server.base, '/api/homework/enter', entering)).status).toBe(200);
  });

  test('the cookie is for https alone, not for scripts, nor for other sites', () => {
    const given = opened.headers['set-cookie']?.[0] ?? '';
    for (const flag of ['HttpOnly', 'Secure', 'SameSite=Lax', 'Path=/', 'Max-Age=']) {
      expect(given).toContain(flag);
    }
    expect(cookie.split('=')[1]).toHaveLength(32);
  });

  const kinds: Record<string, { status: number; ask: () => Promise<Answer> }> = {
    'a prerendered page': { status: 200, ask: () => get('/') },
    'a page made at the door': { status: 200, ask: () => get('/guide', { cookie }) },
    'a redirect': { status: 303, ask: () => get('/guide/new') },
    'a script': { status: 200, ask: async () => get(await scriptOf('/')) },
    'a feed': {
      status: 200,
      ask: () => get(`/api/guide/clinic/${clinic}/feed`, { cookie })
    },
    'a table': {
      status: 200,
      ask: () => get(`/api/guide/homework/${homework.id}/export`, { cookie })
    },
    JSON: {
      status: 200,
      ask: () => sendJson(server.base, `/api/clinic/${code}/join`, { token: newToken() })
    },
    'a refusal': { status: 401, ask: () => sendJson(server.base, '/api/guide/clinic', {}) },
    'what another page sent': {
      status: 403,
      ask: () => {
        const headers = { cookie, origin: 'https://127.0.0.1:9' };
        return askRaw(server.base, { method: 'POST', path: '/api/guide/secret', headers });
      }
    },
    nothing: { status: 404, ask: () => get('/no-such-page') },
    'a wrong method': { status: 405, ask: () => get('/api/homework/send') },
    'a wrong name': { status: 421, ask: () => get('/', { host: 'elsewhere.example' }) },
    'a malformed address': { status: 400, ask: () => get('/%E0%A4%A') }
  };

  test.each(Object.entries(kinds))(
    '%s carries the security headers',
    async (_kind, { status, ask }) => {
      const answer = await ask();
      expect(answer.status).toBe(status);
      expectHeaders(answer);
    }
  );

  async function scriptOf(path: string): Promise<string> {
    const { body } = await get(path);
    return /\/_app\/immutable\/[^"]+\.js/.exec(body)?.[0] ?? '';
  }

  describe('a body', () => {
    const headers = { 'content-type': 'application/json' };
    const path = '/api/homework/send';
    const huge = Buffer.alloc(20_000_000, 'x');

    /**
     * A server that answers while it is still sent to may reset the connection, and the answer is lost with it
     * (RFC 9112, 9.6). A client then sends again; each time it is one of the two.
     */
    async function answerTo(sent: Parameters<typeof askRaw>[1], tries = 5) {
      try {
        return await askRaw(server.base, sent);
      } catch (error) {
        const { code = '' } = error as NodeJS.ErrnoException;
        if (tries === 1 || !['EPIPE', 'ECONNRESET'].includes(code)) throw error;
        return answerTo(sent, tries - 1);
      }
    }

    test('of twenty megabytes is refused, whether or not it says how long it is', async () => {
      const said = { ...headers, 'content-length': String(huge.length) };
      const unsaid = { ...headers, 'transfer-encoding': 'chunked' };
      for (const one of [said, unsaid]) {
        const answer = await answerTo({ method: 'POST', path, headers: one, body: huge });
        expect(answer).toMatchObject({ status: 413, body: '{"error":"This is too big."}' });
        expectHeaders(answer);
      }
    });

    test('of the longest try there is, to every digit, is not too large', async () => {
      const digits = Array.from({ length: 12_100 }, (_, i) => -100 - Math.sqrt(i + 2));
      const lines = digits.map((one) => one / 7);
      const input = { kind: 'rod_input', rate_Hz: 100, elevation_deg: digits, azimuth_deg: digits };
      const sent = {
        ...tryOf(homework.challenge),
        id: newToken(),
        input: { ...input, line_in_m: lines }
      };
      const body = { share: newToken(), token: phone, sent };
      expect(JSON.stringify(body).length).toBeGreaterThan(600_000);
      // As far as the link, which is a wrong one.
      expect(await sendJson(server.base, path, body)).toMatchObject({ status: 404 });
    });
  });

  test('no log and no metric tells of anybody', async () => {
    const sent = { ...tryOf(homework.challenge), id: newToken() };
    const key = { share: homework.share, token: phone };
    expect((await sendJson(server.base, '/api/homework/send', { ...key, sent })).status).toBe(200);
    const metrics = (await get('/metrics')).body;
    expect(metrics).toContain('feltfoot_submissions_total{kind="accepted"} 1\n');
    for (const line of metrics.trimEnd().split('\n')) {
      expect(line).toMatch(/^feltfoot_[a-z_]+(\{[a-z]+="[\w.+]+"\})? [\d.e+-]+$/);
    }
    const { secret } = JSON.parse(opened.body);
    const secrets = [GUIDE, CLIENT, phone, code, homework.share, secret, cookie.split('=')[1]];
    const known = [...secrets, homework.id, clinic, sampleTask.title, '127.0.0.1', folder];
    for (const one of known) {
      expect(one.length).toBeGreaterThan(4);
      expect(metrics).not.toContain(one);
      expect(server.log()).not.toContain(one);
    }
    const events = server
      .log()
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line).event);
    expect(events).toEqual(expect.arrayContaining(['fault', 'store open']));
  });

  /** Phones that have no seat, so many as a room has a place for. @returns once all were shown something */
  async function fiftyFeeds(stop: AbortSignal) {
    const feeds = Array.from({ length: 50 }, () => {
      const heard = { first: () => {}, ended: Promise.resolve() };
      const first = new Promise<void>((resolve) => (heard.first = resolve));
      heard.ended = follow(`${server.base}/api/clinic/${code}/feed`, '', stop, heard.first);
      return { first, ended: heard.ended };
    });
    await Promise.all(feeds.map(({ first }) => first));
    return feeds;
  }

  test('a feed that is left, by whatever breaks the line, makes room for another', async () => {
    const stop = new AbortController();
    const feeds = await fiftyFeeds(stop.signal);
    const ended = Promise.allSettled(feeds.map(({ ended }) => ended));
    const one = () => get(`/api/clinic/${code}/feed`);
    expect(await one()).toMatchObject({ status: 503, headers: { 'retry-after': '15' } });
    stop.abort();
    await ended;
    await expect.poll(async () => (await one()).status).toBe(200);
    await expect.poll(async () => (await get('/metrics')).body).toContain('_listeners 0\n');
  });

  test('told to stop with fifty feeds open and tries on their way, it stops within a second', async () => {
    const feeds = await fiftyFeeds(new AbortController().signal);

    const taken: string[] = [];
    const key = { share: homework.share, token: phone };
    const sending = Array.from({ length: 8 }, async () => {
      const sent = { ...tryOf(homework.challenge), id: newToken() };
      const { status } = await sendJson(server.base, '/api/homework/send', { ...key, sent });
      if (status === 200) taken.push(sent.id);
    });
    await Promise.race(sending);
    const { code: exit, took_ms } = await server.stop('SIGTERM');
    expect({ exit, isSoon: took_ms < 1000 }).toEqual({ exit: 0, isSoon: true });
    await Promise.all(feeds.map(({ ended }) => ended));
    await Promise.allSettled(sending);

    const store = await openStore({ folder: data });
    const rows = await store.db.selectFrom('submissions').select('id').execute();
    await store.close();
    const stored = rows.map(({ id }) => id);
    expect(taken.length).toBeGreaterThan(0);
    expect(stored).toEqual(expect.arrayContaining(taken));
    expect(server.log()).toContain('"event":"stopped"');
  });
});

function expectHeaders({ headers, body }: Answer): void {
  const { 'Content-Security-Policy': framing, ...others } = securityHeaders;
  for (const [name, value] of Object.entries(others))
    expect(headers[name.toLowerCase()]).toBe(value);
  const policy = String(headers['content-security-policy']);
  expect(policy).toContain(framing);
  if (!body.includes('<script')) return;
  // A prerendered page brings the rest of its policy along.
  const all =
    policy + (/http-equiv="content-security-policy" content="([^"]*)"/.exec(body)?.[1] ?? '');
  expect(all).toContain("default-src 'self'");
  expect(all).toMatch(/script-src 'self' '(nonce|sha256)-/);
}
