import {
  addressOf,
  answering,
  bodyOf,
  database,
  guideFrom,
  siteOf,
  takeOne,
  timeNow
} from '$lib/server/http';
import { cookieName } from '$lib/server/cookie-name';
import { beginAdding, beginOpening, CHALLENGE_S, PASSKEY_COOKIE } from '$lib/server/passkeys';
import { limits } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { spaceRequest } from '$lib/wire';

export const prerender = false;

/** What to ask the authenticator, for this browser alone, once. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { way } = await bodyOf(event, spaceRequest.beginPasskey);
    takeOne(limits.beginning, addressOf(event));
    const [db, site, now] = [await database(), siteOf(event), timeNow()];
    const { options, token } =
      way === 'add'
        ? await beginAdding(db, await guideFrom(event), site, now)
        : await beginOpening(db, site, now);
    event.cookies.set(cookieName(PASSKEY_COOKIE, event), token, {
      path: '/',
      httpOnly: true,
      sameSite: 'strict',
      secure: event.url.protocol === 'https:',
      maxAge: CHALLENGE_S
    });
    return options;
  });
