import { answering, database, deviceOf, guideFrom, setCookie, timeNow } from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import { renewSecret, startSession } from '$lib/server/spaces';
import type { RequestHandler } from './$types';

export const prerender = false;

/** A new secret: the old link, the old key file and all other browsers are out. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const db = await database();
    const guide = await guideFrom(event);
    const secret = await renewSecret(db, guide);
    (await runtime()).feed.doubt(guide.space);
    setCookie(event, (await startSession(db, secret, timeNow(), deviceOf(event))) ?? '');
    return { secret };
  });
