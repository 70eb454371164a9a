import {
  answering,
  bodyOf,
  database,
  deviceOf,
  setCookie,
  siteOf,
  timeNow
} from '$lib/server/http';
import { openByPasskey, PASSKEY_COOKIE } from '$lib/server/passkeys';
import { cookieName } from '$lib/server/cookie-name';
import type { RequestHandler } from './$types';
import { spaceRequest } from '$lib/wire';

export const prerender = false;

/** Exchanges a passkey's answer for a cookie. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const sent = await bodyOf(event, spaceRequest.usePasskey);
    const begun = event.cookies.get(cookieName(PASSKEY_COOKIE, event));
    const db = await database();
    setCookie(
      event,
      await openByPasskey(db, siteOf(event), sent, begun, timeNow(), deviceOf(event))
    );
  });
