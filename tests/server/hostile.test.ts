import { describe, expect, test } from 'vitest';
import { depthOf, MOST_DEPTH } from '../../src/lib/server/json-depth';
import { storeTrouble } from '../../src/lib/server/faults';
import { newToken } from '../../src/lib/server/token';
import { ask, endpoints, newClinic, newGuide, newHomework, withStore } from './endpoints';
import { eventOf, Jar } from './events';
import { sampleTask } from './samples';

withStore();

/** An endpoint's answer to a body that is sent as it is written. */
async function sendText(path: string, text: string, jar = new Jar()): Promise<Response> {
  const event = eventOf({ jar });
  const headers = { 'content-type': 'application/json' };
  const request = new Request(event.url, { method: 'POST', headers, body: text });
  return (await endpoints.get(path)?.POST?.({ ...event, request })) as Response;
}

describe('JSON nested deeper than anything of ours', () => {
  test.each([
    ['lists', (deep: number) => '['.repeat(deep) + ']'.repeat(deep)],
    ['objects', (deep: number) => '{"a":'.repeat(deep) + '1' + '}'.repeat(deep)],
    ['what never ends', (deep: number) => '[{"a":'.repeat(deep)]
  ])('in %s is a fault of the sender’s', async (_, nested) => {
    const { jar } = await newGuide('Reed');
    for (const deep of [50, 100_000]) {
      const body = `{"task":${nested(deep)}}`;
      const answer = await sendText('/api/guide/homework', body, jar);
      expect(answer.status).toBe(400);
      expect(await answer.json()).toEqual({ error: 'This JSON is nested too deep.' });
    }
  });

  test('is told from what only looks like it, in words', () => {
    expect(depthOf(String.raw`{"a":"[[[[\"[[[","b":[1]}`)).toBe(2);
    expect(depthOf(JSON.stringify({ task: sampleTask }))).toBeLessThan(MOST_DEPTH / 2);
  });
});

test.each(['EACCES', 'EROFS', 'EPERM'])('a folder that may not be written (%s) is said', (code) => {
  expect(storeTrouble(Object.assign(new Error(code), { code }))).toMatchObject({ status: 503 });
});

test('asked for its head alone, a feed ends, and nobody listens', async () => {
  const { jar } = await newGuide('Reed');
  const { id, code } = await newClinic(jar);
  for (const [path, params] of [
    ['/api/guide/clinic/[id]/feed', { id }],
    ['/api/clinic/[code]/feed', { code }]
  ] as const) {
    const answer = await endpoints.get(path)?.GET?.(eventOf({ method: 'HEAD', jar, params }));
    expect(answer?.headers.get('content-type')).toBe('text/event-stream');
    expect(answer?.body).toBe(null);
  }
  const { body } = await ask('/metrics', { method: 'GET' });
  expect(body).toMatch(/_listeners 0$/m);
});

describe('homework of another guide’s, and none at all', () => {
  test.each([
    ['PATCH', { change: 'close' }],
    ['PATCH', { change: 'extend', due: null }],
    ['DELETE', undefined]
  ])('is not there for %s %o', async (method, body) => {
    const [mine, other] = [await newGuide('Reed'), await newGuide('Silt')];
    const path = '/api/guide/homework/[id]';
    for (const id of [await newHomework(mine.jar), newToken()]) {
      const answer = await ask(path, { method, body, jar: other.jar, params: { id } });
      expect(answer).toEqual({ status: 404, body: '{"error":"That homework isn’t here."}' });
    }
  });
});

describe('what is counted here', () => {
  const get = (headers: Record<string, string>, address = '127.0.0.1') => {
    const event = eventOf({ method: 'GET', address });
    const request = new Request(event.url, { headers });
    return endpoints.get('/metrics')?.GET?.({ ...event, request }) as Promise<Response>;
  };
  const key = 'sedge-and-reed';

  test('is for this machine alone, unless there is a key', async () => {
    expect((await get({})).status).toBe(200);
    expect((await get({}, '192.0.2.7')).status).toBe(403);
    expect((await get({ 'x-forwarded-for': '192.0.2.7' })).status).toBe(403);
  });

  test('is for whoever has the key where there is one, and for nobody else', async () => {
    process.env.FELTFOOT_METRICS_KEY = key;
    try {
      expect((await get({ authorization: `Bearer ${key}` }, '192.0.2.7')).status).toBe(200);
      for (const authorization of ['', `Bearer ${key}s`, `Bearer ${key.slice(1)}`, key]) {
        expect((await get({ authorization })).status).toBe(403);
      }
    } finally {
      delete process.env.FELTFOOT_METRICS_KEY;
    }
  });
});

test('under https the guide’s cookie is bound to this very name, and to no other', async () => {
  const jar = new Jar();
  const event = eventOf({ jar, body: { name: 'Reed' } });
  event.url.protocol = 'https:';
  await endpoints.get('/api/guide/space')?.POST?.(event);
  expect([...jar.kept.keys()]).toEqual(['__Host-feltfoot_guide']);
  expect([...jar.kept.values()][0].options).toMatchObject({ path: '/', secure: true });
  // What a neighbour under a sister name could set is not read.
  const tossed = new Jar();
  tossed.set('feltfoot_guide', jar.get('__Host-feltfoot_guide') ?? '', {});
  const asked = eventOf({ jar: tossed, body: { minutes: 45 } });
  asked.url.protocol = 'https:';
  expect((await endpoints.get('/api/guide/clinic')?.POST?.(asked))?.status).toBe(401);
});
