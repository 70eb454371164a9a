import { describe, expect, test } from 'vitest';
import { runtime } from '../../src/lib/server/runtime';
import { ask, load, newGuide, newHomework, shareOf, withStore } from './endpoints';
import { Jar } from './events';
import { SoftKey } from './soft-key';

withStore();

const HERE = 'http://localhost';
const paths = {
  begin: '/api/guide/passkey/begin',
  add: '/api/guide/passkey',
  open: '/api/guide/passkey/open',
  one: '/api/guide/passkey/[id]'
};

async function begin(way: 'add' | 'open', jar: Jar): Promise<string> {
  const { status, body } = await ask(paths.begin, { body: { way }, jar });
  expect(status).toBe(200);
  return JSON.parse(body).challenge;
}

async function add(key: SoftKey, jar: Jar, origin = HERE) {
  const challenge = await begin('add', jar);
  return ask(paths.add, { body: key.made(challenge, origin), jar });
}

async function open(key: SoftKey, jar = new Jar(), origin = HERE) {
  const challenge = await begin('open', jar);
  return ask(paths.open, { body: key.used(challenge, origin), jar, address: `of ${key.sealing}` });
}

async function guideWithKey() {
  const { jar, secret } = await newGuide('Reed');
  const key = new SoftKey();
  expect(await add(key, jar)).toMatchObject({ status: 200 });
  return { jar, secret, key };
}

test('a passkey opens its own guide’s space, with the key of the client links', async () => {
  const { jar, key } = await guideWithKey();
  const id = await newHomework(jar);
  const other = await guideWithKey();
  const browser = new Jar();
  expect(await open(key, browser)).toMatchObject({ status: 200 });
  expect(await shareOf(browser, id)).toBe(await shareOf(jar, id));
  const elsewhere = new Jar();
  expect(await open(other.key, elsewhere)).toMatchObject({ status: 200 });
  expect(await load('/guide/[id]', { jar: elsewhere, params: { id } })).toMatchObject({
    status: 404
  });
});

test('the store alone opens nothing: another secret than the authenticator’s does not fit', async () => {
  const { key } = await guideWithKey();
  const jar = new Jar();
  const answer = key.used(await begin('open', jar), HERE);
  const body = { ...answer, sealing: new SoftKey().sealing };
  expect(await ask(paths.open, { body, jar })).toMatchObject({ status: 403 });
  expect(jar.get('feltfoot_guide')).toBeUndefined();
  const { store } = await runtime();
  const rows = await store.db.selectFrom('passkeys').selectAll().execute();
  expect(JSON.stringify(rows)).not.toContain(key.sealing);
});

describe('a challenge', () => {
  test('is good once', async () => {
    const { key } = await guideWithKey();
    const jar = new Jar();
    const body = key.used(await begin('open', jar), HERE);
    expect(await ask(paths.open, { body, jar })).toMatchObject({ status: 200 });
    expect(await ask(paths.open, { body, jar })).toMatchObject({ status: 403 });
  });

  test('is good for the browser that began alone', async () => {
    const { key } = await guideWithKey();
    const [mine, thief] = [new Jar(), new Jar()];
    const body = key.used(await begin('open', mine), HERE);
    expect(await ask(paths.open, { body, jar: thief })).toMatchObject({ status: 403 });
    await begin('open', thief);
    expect(await ask(paths.open, { body, jar: thief })).toMatchObject({ status: 403 });
  });

  test('that adds does not open, nor for another guide', async () => {
    const { jar } = await newGuide('Reed');
    const challenge = await begin('add', jar);
    const stranger = (await newGuide('Silt')).jar;
    stranger.kept.set('feltfoot_passkey', jar.kept.get('feltfoot_passkey') as never);
    const body = new SoftKey().made(challenge, HERE);
    expect(await ask(paths.add, { body, jar: stranger })).toMatchObject({ status: 403 });
  });

  test('lives for minutes', async () => {
    const { key } = await guideWithKey();
    const jar = new Jar();
    const body = key.used(await begin('open', jar), HERE);
    const { store } = await runtime();
    await store.db.updateTable('challenges').set({ ends_at: new Date().toISOString() }).execute();
    expect(await ask(paths.open, { body, jar })).toMatchObject({ status: 403 });
  });

  test('comes back in a cookie that scripts and other sites never get', async () => {
    const jar = new Jar();
    await begin('open', jar);
    expect(jar.kept.get('feltfoot_passkey')?.options).toMatchObject({
      httpOnly: true,
      sameSite: 'strict',
      path: '/'
    });
  });
});

describe('refused is', () => {
  test('another origin, when a passkey is made and when it is used', async () => {
    const { jar, key } = await guideWithKey();
    const elsewhere = 'http://elsewhere.example';
    expect(await add(new SoftKey(), jar, elsewhere)).toMatchObject({ status: 403 });
    expect(await add(new SoftKey(), jar, 'http://localhost:99')).toMatchObject({ status: 403 });
    expect(await open(key, new Jar(), elsewhere)).toMatchObject({ status: 403 });
  });

  test('a key that only claims to be another guide’s', async () => {
    const { key } = await guideWithKey();
    const forged = new SoftKey();
    const jar = new Jar();
    const answer = forged.used(await begin('open', jar), HERE);
    const id = key.id.toString('base64url');
    const body = { response: { ...answer.response, id, rawId: id }, sealing: key.sealing };
    expect(await ask(paths.open, { body, jar })).toMatchObject({ status: 403 });
  });

  test('who adds without a cookie', async () => {
    const jar = new Jar();
    expect(await ask(paths.begin, { body: { way: 'add' }, jar })).toMatchObject({ status: 401 });
  });
});

describe('a passkey is void', () => {
  test('once its guide removed it; another guide cannot', async () => {
    const { jar, key } = await guideWithKey();
    const params = { id: key.id.toString('base64url') };
    const stranger = (await newGuide('Silt')).jar;
    await ask(paths.one, { method: 'DELETE', jar: stranger, params });
    expect(await open(key)).toMatchObject({ status: 200 });
    await ask(paths.one, { method: 'DELETE', jar, params });
    expect(await open(key)).toMatchObject({ status: 404 });
  });

  test('after a new secret, and with its space', async () => {
    const { jar, key } = await guideWithKey();
    await ask('/api/guide/secret', { jar });
    expect(await open(key)).toMatchObject({ status: 404 });
    const again = new SoftKey();
    expect(await add(again, jar)).toMatchObject({ status: 200 });
    await ask('/api/guide/space', { method: 'DELETE', jar });
    expect(await open(again)).toMatchObject({ status: 404 });
  });
});
