import {
  addressOf,
  answering,
  bodyOf,
  cookieOf,
  database,
  deviceOf,
  deleting,
  dropCookie,
  guideFrom,
  setCookie,
  takeOne,
  timeNow
} from '$lib/server/http';
import { deleteSpace } from '$lib/server/retention';
import { limits, runtime } from '$lib/server/runtime';
import { createSpace, endSession, startSession } from '$lib/server/spaces';
import type { RequestHandler } from './$types';
import { spaceRequest } from '$lib/wire';

export const prerender = false;

/** Opens a space; its secret is told here and never again. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { name } = await bodyOf(event, spaceRequest.open);
    takeOne(limits.opening, addressOf(event));
    const db = await database();
    const secret = await createSpace(db, name, timeNow());
    setCookie(event, (await startSession(db, secret, timeNow(), deviceOf(event))) ?? '');
    return { secret };
  });

/** Deletes the space with all homework, clients and clinics. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const db = await database();
    await deleting(() => deleteSpace(db, guide.space));
    await endSession(db, cookieOf(event) ?? '');
    (await runtime()).feed.doubt(guide.space);
    dropCookie(event);
  });
