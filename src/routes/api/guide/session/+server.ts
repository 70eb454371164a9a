import { Refusal } from '$lib/server/faults';
import {
  answering,
  bodyOf,
  cookieOf,
  database,
  deviceOf,
  dropCookie,
  setCookie,
  timeNow
} from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import { endSession, startSession } from '$lib/server/spaces';
import type { RequestHandler } from './$types';
import { spaceRequest } from '$lib/wire';

export const prerender = false;

/** Exchanges the guide's secret for a cookie. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { secret } = await bodyOf(event, spaceRequest.enter);
    const session = await startSession(await database(), secret, timeNow(), deviceOf(event));
    if (session) return setCookie(event, session);
    throw new Refusal(404, 'No space has this key. It may have been replaced or deleted.');
  });

/** Leaves this browser. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const space = await endSession(await database(), cookieOf(event) ?? '');
    if (space) (await runtime()).feed.doubt(space);
    dropCookie(event);
  });
