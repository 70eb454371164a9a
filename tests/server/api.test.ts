import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { RequestEvent } from '@sveltejs/kit';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newToken } from '../../src/lib/server/token';
import { eventOf, Jar } from './events';
import { evenHand, sampleChallenge, sampleTask } from './samples';

type Handler = (event: RequestEvent) => Response | Promise<Response>;
type Endpoint = Partial<Record<'GET' | 'POST' | 'PATCH' | 'DELETE', Handler>>;
const METHODS = ['GET', 'POST', 'PATCH', 'DELETE'] as const;

const files = import.meta.glob<Endpoint>('../../src/routes/**/+server.ts', { eager: true });
const endpoints = new Map(
  Object.entries(files).map(([file, endpoint]) => {
    const path = file.replace(/^.*\/routes/, '').replace(/\/\+server\.ts$/, '');
    return [path, endpoint] as const;
  })
);

const folder = mkdtempSync(join(tmpdir(), 'feltfoot-api-'));
beforeAll(() => {
  delete process.env.DATABASE_URL;
  process.env.FELTFOOT_DATA = folder;
});
afterAll(async () => {
  process.emit('sveltekit:shutdown' as never, 'test' as never);
  await new Promise((resolve) => setTimeout(resolve, 100));
  rmSync(folder, { recursive: true, force: true });
});

type Asked = Parameters<typeof eventOf>[0];
async function ask(path: string, asked: Asked) {
  const handler = endpoints.get(path)?.[(asked.method ?? 'POST') as 'POST'];
  if (!handler) throw new Error(`no ${asked.method ?? 'POST'} ${path}`);
  const response = await handler(eventOf(asked));
  return { status: response.status, body: await response.text() };
}

async function newGuide(name: string) {
  const jar = new Jar();
  const { body } = await ask('/api/guide/space', { body: { name }, jar });
  return { jar, secret: JSON.parse(body).secret as string };
}

async function newHomework(jar: Jar): Promise<string> {
  const { body } = await ask('/api/guide/homework', { body: { task: sampleTask }, jar });
  return JSON.parse(body).id;
}

describe('the guide’s cookie', () => {
  test('is not for scripts, nor for other sites', async () => {
    const { jar } = await newGuide('Reed');
    expect(jar.kept.get('feltfoot_guide')?.options).toMatchObject({
      httpOnly: true,
      sameSite: 'lax',
      path: '/'
    });
  });

  test('comes for the secret, and not for a wrong one', async () => {
    const { secret } = await newGuide('Reed');
    const [right, wrong] = [new Jar(), new Jar()];
    expect(await ask('/api/guide/session', { body: { secret }, jar: right })).toMatchObject({
      status: 200
    });
    const other = { body: { secret: newToken() }, jar: wrong, address: '127.0.0.2' };
    expect(await ask('/api/guide/session', other)).toMatchObject({ status: 404 });
    expect([right.kept.size, wrong.kept.size]).toEqual([1, 0]);
  });

  test('guessing is slowed by address, while the right key still opens from elsewhere', async () => {
    const { secret } = await newGuide('Reed');
    const wrong = { body: { secret: newToken() }, address: '127.0.0.3' };
    const statuses: number[] = [];
    for (let i = 0; i < 70; i++) statuses.push((await ask('/api/guide/session', wrong)).status);
    expect(new Set(statuses)).toEqual(new Set([404, 429]));
    expect(await ask('/api/guide/session', { body: { secret } })).toMatchObject({ status: 200 });
  });
});

/** A body that each address would take from the right guide. */
const bodies: Record<string, unknown> = {
  'POST /api/guide/homework': { task: sampleTask },
  'PATCH /api/guide/homework/[id]': { change: 'close' },
  'POST /api/guide/homework/[id]/note': { client: newToken(), note: 'Hello' }
};
/** How one comes in: these take no cookie. */
const doors = ['POST /api/guide/space', 'POST /api/guide/session', 'DELETE /api/guide/session'];
const guarded = [...endpoints]
  .filter(([path]) => path.startsWith('/api/guide/'))
  .flatMap(([path, endpoint]) =>
    METHODS.filter((m) => endpoint[m]).map((method) => ({ method, path }))
  )
  .filter(({ method, path }) => !doors.includes(`${method} ${path}`));

describe('every address of the guide’s', () => {
  test('is found', () => expect(guarded.length).toBeGreaterThanOrEqual(7));

  test.each(guarded)(
    '$method $path refuses without a cookie and with a made-up one',
    async ({ method, path }) => {
      const forged = new Jar();
      forged.set('feltfoot_guide', newToken(), {});
      for (const jar of [new Jar(), forged]) {
        const asked = {
          method,
          jar,
          body: method === 'GET' ? undefined : (bodies[`${method} ${path}`] ?? {}),
          params: { id: newToken() }
        };
        expect(await ask(path, asked)).toMatchObject({ status: 401 });
      }
    }
  );

  test.each(guarded.filter(({ path }) => path.includes('[id]')))(
    '$method $path does nothing to another guide’s',
    async ({ method, path }) => {
      const [mine, other] = [await newGuide('Reed'), await newGuide('Silt')];
      const id = await newHomework(mine.jar);
      const seen = () =>
        ask('/api/guide/homework/[id]/export', {
          method: 'GET',
          jar: mine.jar,
          params: { id },
          path: '/?as=json'
        });
      const before = await seen();
      const asked = {
        method,
        jar: other.jar,
        body: method === 'GET' ? undefined : (bodies[`${method} ${path}`] ?? {}),
        params: { id }
      };
      const { body } = await ask(path, asked);
      expect(body).not.toContain(sampleTask.title);
      expect(before).toMatchObject({
        status: 200,
        body: expect.stringContaining(sampleTask.title)
      });
      expect(await seen()).toEqual(before);
    }
  );
});

describe('a client’s phone', () => {
  const forms = { text: 'text/plain', form: 'application/x-www-form-urlencoded' };
  test.each(Object.entries(forms))(
    'cannot be made to send by another site’s %s',
    async (_name, type) => {
      const event = eventOf({ body: {} });
      event.request.headers.set('content-type', type);
      const response = await endpoints.get('/api/homework/send')?.POST?.(event);
      expect(response?.status).toBe(415);
    }
  );

  test.each([
    [
      'a name of a thousand letters',
      '/api/homework/enter',
      { share: newToken(), token: newToken(), name: 'x'.repeat(1000) }
    ],
    ['a short token', '/api/homework/enter', { share: newToken(), token: 'abc', name: 'Ina' }],
    [
      'an unknown key',
      '/api/homework/enter',
      { share: newToken(), token: newToken(), name: 'Ina', admin: true }
    ],
    [
      'an hour of rod input',
      '/api/homework/send',
      {
        share: newToken(),
        token: newToken(),
        sent: {
          kind: 'try',
          id: 'a'.repeat(16),
          challenge: 'c',
          model: '1',
          marks: 1,
          at: '2031-05-01T08:00:00.000Z',
          input: evenHand(sampleChallenge, 9, 3600)
        }
      }
    ]
  ])('is refused %s', async (_what, path, body) => {
    expect(await ask(path, { body })).toMatchObject({ status: 422 });
  });
});

test('health and metrics answer, and tell of nobody', async () => {
  await newGuide('Somebody in particular');
  expect(await ask('/healthz', { method: 'GET' })).toMatchObject({ status: 200 });
  const { body } = await ask('/metrics', { method: 'GET' });
  expect(body).toMatch(/^feltfoot_memory_bytes \d+$/m);
  expect(body).not.toContain('Somebody');
});
