import { newToken } from '../../src/lib/server/token';
import {
  addresses,
  ask,
  load,
  newClinic,
  newGuide,
  newHomework,
  pages,
  shareOf
} from './endpoints';
import type { Jar } from './events';

export const CLIENT = 'Ina of the reeds';
/** How one comes in: these take no cookie. */
const doors = [
  'POST /api/guide/space',
  'POST /api/guide/session',
  'DELETE /api/guide/session',
  'POST /api/guide/passkey/begin',
  'POST /api/guide/passkey/open'
];
export const guarded = addresses
  .filter(({ path }) => path.startsWith('/api/guide/'))
  .filter(({ method, path }) => !doors.includes(`${method} ${path}`))
  .map(({ method, path }) => ({ what: `${method} ${path}`, method, path }));
export const guardedPages = [...pages.keys()]
  .filter((path) => path !== '/guide')
  .map((path) => ({ what: `the page ${path}`, method: 'GET', path }));
export const all = [...guarded, ...guardedPages];

/** What one guide has, and another wants. */
export interface Owned {
  jar: Jar;
  /** The secret of the guide's key file. */
  secret: string;
  homework: string;
  share: string;
  clinic: string;
  code: string;
  client: string;
  /** The client's own secret, on the phone. */
  token: string;
}

export async function newOwned(): Promise<Owned> {
  const { jar, secret } = await newGuide('Reed');
  const homework = await newHomework(jar);
  const share = await shareOf(jar, homework);
  const token = newToken();
  await ask('/api/homework/enter', { body: { share, token, name: CLIENT } });
  const { standings } = JSON.parse(
    (await load('/guide/[id]', { jar, params: { id: homework } })).body
  );
  const { id: clinic, code } = await newClinic(jar);
  // A phone that has answered nothing, which only the owner may clear.
  await ask('/api/clinic/[code]/join', { body: { token: newToken() }, params: { code } });
  return { jar, secret, homework, share, clinic, code, client: standings[0].id, token };
}

/** With each id of the owner's where an address takes one. */
export function idsFor(owned: Owned, path: string): Record<string, string>[] {
  const { homework, clinic, client } = owned;
  if (!path.includes('[id]')) return [{}];
  return [homework, clinic, client].map((id) => ({ id, client }));
}
