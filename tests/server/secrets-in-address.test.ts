import { beforeAll, describe, expect, test } from 'vitest';
import { ask, load, pages, withStore } from './endpoints';
import { Jar } from './events';
import { all, CLIENT, idsFor, newOwned, type Owned } from './owned';

withStore();

let mine: Owned;
beforeAll(async () => void (mine = await newOwned()), 60_000);

/** Every secret of the owner's and of a client's, under every name that it might be looked for. */
function inAddress(): string {
  const { secret, share, token, jar, code } = mine;
  const cookie = jar.get('feltfoot_guide') ?? '';
  const guide = { feltfoot_guide: cookie, cookie, session: cookie, secret, key: secret };
  return `/?${new URLSearchParams({ ...guide, share, token, code })}`;
}

/** What phones ask, each with the rest of its body; and the door of guides. */
const phones = [
  { path: '/api/homework/look', rest: {} },
  { path: '/api/homework/enter', rest: { name: 'Bo' } },
  { path: '/api/homework/send', rest: { sent: {} } },
  { path: '/api/homework/forget', rest: {} },
  { path: '/api/clinic/[code]/join', rest: {} },
  { path: '/api/clinic/[code]/forget', rest: {} },
  { path: '/api/guide/session', rest: {} }
];

/** An address is logged, kept and passed on: what opens anything comes in a cookie or a body alone. */
describe('a secret in the address opens nothing', () => {
  test.each(all)('of a guide’s, by $what', async ({ method, path }) => {
    for (const params of idsFor(mine, path)) {
      const asked = { jar: new Jar(), params, path: inAddress() };
      const body = method === 'GET' ? undefined : {};
      const { status, body: said } = pages.has(path)
        ? await load(path, asked)
        : await ask(path, { ...asked, method, body });
      expect(status).toBe(pages.has(path) ? 303 : 401);
      expect(said).not.toContain(CLIENT);
    }
  });

  test('of a guide’s, on the first page, which shows the door', async () => {
    const { body } = await load('/guide', { jar: new Jar(), path: inAddress() });
    expect(JSON.parse(body)).toMatchObject({ guide: null, homework: [], clinics: [] });
  });

  test.each(phones)('of a phone’s, by $path', async ({ path, rest }) => {
    const jar = new Jar();
    const asked = { jar, params: { code: mine.code }, path: inAddress(), address: path };
    expect(await ask(path, { ...asked, body: rest })).toMatchObject({ status: 422 });
    expect(jar.kept.size).toBe(0);
  });
});
