import { beforeAll, describe, expect, test } from 'vitest';
import { runtime } from '../../src/lib/server/runtime';
import { newToken } from '../../src/lib/server/token';
import { ask, load, newGuide, newHomework, pages, withStore, type Asked } from './endpoints';
import { Jar } from './events';
import { all, CLIENT, guarded, guardedPages, idsFor, newOwned, type Owned } from './owned';
import { evenHand, sampleChallenge, sampleTask } from './samples';

withStore();

let mine: Owned;
let other: Jar;

/** A body that each address would take from the right guide. */
const bodies = (): Record<string, unknown> => ({
  'POST /api/guide/homework': { task: sampleTask },
  'PATCH /api/guide/homework/[id]': { change: 'close' },
  'POST /api/guide/homework/[id]/note': { client: mine.client, note: 'Hello' },
  'POST /api/guide/clinic': { minutes: 45 },
  'POST /api/guide/clinic/[id]': { do: 'hold' },
  'POST /api/guide/clinic/[id]/door': { door: 'closed' }
});

beforeAll(async () => {
  other = (await newGuide('Silt')).jar;
  mine = await newOwned();
});

/** Everything that the owner sees, but for how long the round has gone on: that is the clock’s doing. */
async function seen(): Promise<string> {
  const { jar, homework: id, clinic } = mine;
  const parts = [
    await load('/guide', { jar }),
    await load('/guide/[id]', { jar, params: { id } }),
    await load('/guide/[id]/[client]', { jar, params: { id, client: mine.client } }),
    await load('/clinic/[id]', { jar, params: { id: clinic } })
  ];
  expect(parts.map(({ status }) => status)).toEqual([200, 200, 200, 200]);
  return JSON.stringify(parts).replace(/\\"round_s\\":\d+/, '');
}

function askAny({ method, path }: (typeof all)[number], jar: Jar, params: Record<string, string>) {
  if (pages.has(path))
    return load(path, { jar, params, path: `/?client=${mine.homework}.${mine.client}` });
  const body = method === 'GET' ? undefined : (bodies()[`${method} ${path}`] ?? {});
  const asked: Asked = { method, jar, params, body };
  return ask(path, asked);
}

test('the addresses and pages of a guide’s are found', () => {
  expect(guarded.length).toBeGreaterThanOrEqual(11);
  expect(guardedPages.map(({ path }) => path).sort()).toEqual([
    '/clinic/[id]',
    '/clinic/[id]/lead',
    '/clinic/[id]/summary',
    '/guide/[id]',
    '/guide/[id]/[client]',
    '/guide/clients',
    '/guide/new',
    '/guide/plan'
  ]);
});

describe('nobody gets in', () => {
  test.each(all)('to $what without a cookie, nor with a made-up one', async (address) => {
    const forged = new Jar();
    forged.set('feltfoot_guide', newToken(), {});
    const before = await seen();
    for (const jar of [new Jar(), forged]) {
      for (const params of idsFor(mine, address.path)) {
        const { status, body } = await askAny(address, jar, params);
        expect(status).toBe(pages.has(address.path) ? 303 : 401);
        expect(body).not.toContain(sampleTask.title);
        expect(body).not.toContain(CLIENT);
      }
    }
    expect(await seen()).toBe(before);
  });

  test('to the guide’s first page, which shows the door', async () => {
    const { status, body } = await load('/guide', { jar: new Jar() });
    const seen = { guide: null, homework: [], clinics: [] };
    expect({ status, ...JSON.parse(body) }).toMatchObject({ status: 200, ...seen });
  });
});

describe('another guide gets and changes nothing', () => {
  const withId = all.filter(({ path }) => path.includes('[id]') || path === '/guide/plan');
  test.each(withId)('by $what', async (address) => {
    const before = await seen();
    for (const params of idsFor(mine, address.path)) {
      const { status, body } = await askAny(address, other, params);
      expect(body).not.toContain(sampleTask.title);
      expect(body).not.toContain(CLIENT);
      expect(body).not.toContain(mine.code);
      if (address.method === 'GET') expect(status).toBe(404);
    }
    expect(await seen()).toBe(before);
  });

  test('by deleting a client of mine as one of their own homework', async () => {
    const before = await seen();
    const { jar } = await newGuide('Silt again');
    const params = { id: await newHomework(jar), client: mine.client };
    const path = '/api/guide/homework/[id]/client/[client]';
    expect(await ask(path, { method: 'DELETE', jar, params })).toMatchObject({ status: 404 });
    expect(await seen()).toBe(before);
  });

  test('on the guide’s first page', async () => {
    const { body } = await load('/guide', { jar: other });
    expect(JSON.parse(body)).toMatchObject({ guide: { name: 'Silt' }, homework: [], clinics: [] });
  });
});

describe('a phone with a wrong key gets nothing', () => {
  const sent = () => ({
    kind: 'try',
    id: newToken(),
    challenge: sampleChallenge.id,
    input: evenHand(sampleChallenge, 9, 1),
    model: '1',
    at: '2031-05-01T08:00:00.000Z',
    marks: 1
  });
  const vote = (view: { part: string; shown: { options: { id: string }[] } }) => {
    return { kind: 'vote', id: newToken(), part: view.part, option: view.shown.options[0].id };
  };
  const address = 'a stranger’s';

  test('with a wrong link', async () => {
    const key = { share: newToken(), token: mine.token };
    const asked = [
      ask('/api/homework/look', { body: { share: key.share }, address }),
      ask('/api/homework/enter', { body: { ...key, name: 'Bo' }, address }),
      ask('/api/homework/send', { body: { ...key, sent: sent() }, address }),
      ask('/api/homework/forget', { body: key, address })
    ];
    for (const { status, body } of await Promise.all(asked)) {
      expect(status).toBe(404);
      expect(body).not.toContain(sampleTask.title);
    }
  });

  test('with the link, who only looks at what is asked', async () => {
    const before = await seen();
    const { status, body } = await ask('/api/homework/look', {
      body: { share: mine.share },
      address
    });
    expect(status).toBe(200);
    expect(JSON.parse(body)).toEqual({ task: sampleTask, closed_at: null });
    expect(body).not.toContain(CLIENT);
    expect(await seen()).toBe(before);
  });

  test('with the link but another phone’s place', async () => {
    const key = { share: mine.share, token: newToken() };
    const before = await seen();
    expect(
      await ask('/api/homework/send', { body: { ...key, sent: sent() }, address })
    ).toMatchObject({ status: 403 });
    await ask('/api/homework/forget', { body: key, address });
    expect(await seen()).toBe(before);
  });

  test('with a wrong code', async () => {
    const { view } = JSON.parse(
      (await load('/clinic/[id]', { jar: mine.jar, params: { id: mine.clinic } })).body
    );
    const params = { code: mine.code === '222222' ? '333333' : '222222' };
    const token = newToken();
    const asked = [
      ask('/api/clinic/[code]/join', { body: { token }, params, address }),
      ask('/api/clinic/[code]/answer', { body: { token, answer: vote(view) }, params, address }),
      ask('/api/clinic/[code]/forget', { body: { token }, params, address }),
      ask('/api/clinic/[code]/feed', { method: 'GET', params, address })
    ];
    for (const { status } of await Promise.all(asked)) expect(status).toBe(404);
  });

  test('with the code but another phone’s place, and with its own all its answers go', async () => {
    const screen = { jar: mine.jar, params: { id: mine.clinic } };
    const viewed = async () => JSON.parse((await load('/clinic/[id]', screen)).body).view;
    const view = await viewed();
    const asked = { params: { code: mine.code }, address };
    const token = newToken();
    await ask('/api/clinic/[code]/join', { ...asked, body: { token } });
    const answer = { ...asked, body: { token, answer: vote(view) } };
    expect(await ask('/api/clinic/[code]/answer', answer)).toMatchObject({ status: 200 });
    expect(await viewed()).toMatchObject({ seats: view.seats + 1, answered: 1 });
    const before = await seen();
    const forget = (body: unknown) => ask('/api/clinic/[code]/forget', { ...asked, body });
    expect(await forget({})).toMatchObject({ status: 422 });
    expect(await forget({ token: newToken() })).toMatchObject({ status: 200 });
    expect(await seen()).toBe(before);

    // The wish holds as long as anything is kept, however long the code is dead.
    const { db } = (await runtime()).store;
    const ending = (ends_at: string) =>
      db.updateTable('rooms').set({ ends_at }).where('id', '=', mine.clinic).execute();
    await ending('2000-01-01T00:00:00.000Z');
    expect(await ask('/api/clinic/[code]/answer', answer)).toMatchObject({ status: 404 });
    expect(await forget({ token })).toMatchObject({ status: 200 });
    await ending('2999-01-01T00:00:00.000Z');
    expect(await viewed()).toMatchObject({ seats: view.seats, answered: 0 });
    expect(await ask('/api/clinic/[code]/answer', answer)).toMatchObject({ status: 403 });
    expect(await viewed()).toMatchObject({ seats: view.seats, answered: 0 });
  });

  test('and the code opens the phones’ view only, never the screen’s', async () => {
    const params = { code: mine.code };
    const { status, body } = await ask('/api/clinic/[code]/feed', { method: 'GET', params });
    expect(status).toBe(200);
    expect(body).not.toContain('"answered"');
    expect(body).not.toContain('"counts"');
  });
});
