import { describe, expect, test } from 'vitest';
import { isParticipantIn } from '../../src/lib/server/rooms';
import { runtime } from '../../src/lib/server/runtime';
import { newToken } from '../../src/lib/server/token';
import {
  ask,
  endpoints,
  load,
  newClinic,
  newGuide,
  newHomework,
  pages,
  shareOf,
  withStore
} from './endpoints';
import { eventOf, Jar } from './events';
import { evenHand, sampleChallenge } from './samples';

withStore();

describe('the guide’s cookie', () => {
  test('is not for scripts, nor for other sites', async () => {
    const { jar } = await newGuide('Reed');
    expect(jar.kept.get('feltfoot_guide')?.options).toMatchObject({
      httpOnly: true,
      sameSite: 'lax',
      path: '/'
    });
  });

  test('has a key whose link other devices on the network can open', async () => {
    const { jar } = await newGuide('Reed');
    const event = eventOf({ method: 'GET', jar });
    event.request.headers.set('x-feltfoot-lan', '192.168.7.4');
    const data = await pages.get('/guide')?.load(event);
    expect(data).toMatchObject({ guide: { origin: 'http://192.168.7.4' } });
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

  test('wrong keys, however many, do not shut out the right one', async () => {
    const { secret } = await newGuide('Reed');
    const address = '127.0.0.3';
    const wrong = { body: { secret: newToken() }, address };
    const statuses: number[] = [];
    for (let i = 0; i < 310; i++) statuses.push((await ask('/api/guide/session', wrong)).status);
    expect(new Set(statuses)).toEqual(new Set([404]));
    const right = { body: { secret }, address };
    expect(await ask('/api/guide/session', right)).toMatchObject({ status: 200 });
  });
});

describe('an open screen', () => {
  async function screens(count: number) {
    const { secret, jar } = await newGuide('Reed');
    const { id } = await newClinic(jar);
    const opened = Array.from({ length: count }, async () => {
      const jar = new Jar();
      await ask('/api/guide/session', { body: { secret }, jar });
      const asked = eventOf({ method: 'GET', jar, params: { id } });
      const response = await endpoints.get('/api/guide/clinic/[id]/feed')?.GET?.(asked);
      const reader = response?.body?.getReader();
      await reader?.read();
      await reader?.read();
      return { jar, reader, ended: async () => (await reader?.read())?.done };
    });
    return { jar, id, all: await Promise.all(opened) };
  }

  test('ends when its browser leaves, and no other does', async () => {
    const { all } = await screens(2);
    const [{ jar, ended }, other] = all;
    await ask('/api/guide/session', { method: 'DELETE', jar });
    expect(await ended()).toBe(true);
    const { feed } = await runtime();
    expect(feed.listeners).toBe(1);
    await other.reader?.cancel();
  });

  test.each([
    ['another device makes a new key', 'POST', '/api/guide/secret'],
    ['the space is deleted', 'DELETE', '/api/guide/space']
  ])('ends when %s', async (_what, method, path) => {
    const { jar, all } = await screens(2);
    await ask(path, { method, jar });
    expect(await Promise.all(all.map(({ ended }) => ended()))).toEqual([true, true]);
  });
});

test('feeds of phones without a seat are bounded, and a phone with one has its own', async () => {
  const { id, code } = await newClinic((await newGuide('Reed')).jar);
  const follow = async (path = '/') => {
    const asked = eventOf({ method: 'GET', params: { code }, path });
    const response = await endpoints.get('/api/clinic/[code]/feed')?.GET?.(asked);
    if (!response) throw new Error('no feed');
    return response;
  };
  const feeds = await Promise.all(Array.from({ length: 50 }, () => follow()));
  const refused = await follow();
  expect(refused.status).toBe(503);
  expect(refused.headers.get('retry-after')).toBe('15');
  expect(await refused.json()).toEqual({
    error: 'Too many people are watching this clinic. Try again soon.'
  });
  const body = { token: newToken() };
  const entered = await ask('/api/clinic/[code]/join', { body, params: { code } });
  const { seat } = JSON.parse(entered.body);
  expect((await follow(`/?seat=${newToken()}`)).status).toBe(503);
  feeds.push(await follow(`/?seat=${seat}`));
  expect(feeds.map(({ status }) => status)).toEqual(feeds.map(() => 200));
  const next = await newClinic((await newGuide('Silt')).jar);
  // A seat is one in its own room alone.
  const { db } = (await runtime()).store;
  expect(await isParticipantIn(db, { room: id, id: seat })).toBe(true);
  expect(await isParticipantIn(db, { room: next.id, id: seat })).toBe(false);
  await Promise.all(feeds.map(({ body }) => body?.cancel()));
  expect((await runtime()).feed.listeners).toBe(0);
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

describe('a guide who deletes one client', () => {
  test('deletes no other of that name, and a phone left open does not bring them back', async () => {
    const { jar } = await newGuide('Reed');
    const id = await newHomework(jar);
    const share = await shareOf(jar, id);
    const clients = async () => {
      const { body } = await load('/guide/[id]', { jar, params: { id } });
      return JSON.parse(body).standings.map((one: { id: string }) => one.id);
    };
    const phones = [newToken(), newToken()];
    const enter = (token: string, rest: object = {}) =>
      ask('/api/homework/enter', { body: { share, token, name: 'Ina', ...rest } });
    const [first, second] = await Promise.all(
      phones.map(async (token) => JSON.parse((await enter(token)).body).client.id)
    );
    const path = '/api/guide/homework/[id]/client/[client]';
    const remove = () => ask(path, { method: 'DELETE', jar, params: { id, client: first } });
    expect(await remove()).toMatchObject({ status: 200 });
    expect(await clients()).toEqual([second]);
    expect(await remove()).toMatchObject({ status: 404 });

    expect(await enter(phones[0], { isBack: true })).toMatchObject({ status: 410 });
    expect(await enter(phones[1], { isBack: true })).toMatchObject({ status: 200 });
    expect(await clients()).toEqual([second]);
    expect(await enter(phones[0])).toMatchObject({ status: 200 });
    expect(await clients()).toHaveLength(2);
  });
});

test('health and metrics answer, and tell of nobody', async () => {
  await newGuide('Somebody in particular');
  expect(await ask('/healthz', { method: 'GET' })).toMatchObject({ status: 200 });
  const { body } = await ask('/metrics', { method: 'GET' });
  expect(body).toMatch(/^feltfoot_memory_bytes \d+$/m);
  expect(body).not.toContain('Somebody');
});
