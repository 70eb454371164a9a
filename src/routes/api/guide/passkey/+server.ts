import { answering, bodyOf, database, guideFrom, siteOf, timeNow } from '$lib/server/http';
import { addPasskey, PASSKEY_COOKIE } from '$lib/server/passkeys';
import { cookieName } from '$lib/server/cookie-name';
import type { RequestHandler } from './$types';
import { spaceRequest } from '$lib/wire';

export const prerender = false;

/** A second way into the guide's space. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const sent = await bodyOf(event, spaceRequest.addPasskey);
    const begun = event.cookies.get(cookieName(PASSKEY_COOKIE, event));
    await addPasskey(await database(), guide, siteOf(event), sent, begun, timeNow());
  });
