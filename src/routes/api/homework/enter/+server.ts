import { enter } from '$lib/server/clients';
import { answering, bodyOf, database, takeOne, timeNow } from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import { line, token } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const entering = v.strictObject({ share: token, token, name: line(40) });

/** A client's phone comes to its homework, the first time or again. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token, name } = await bodyOf(event, entering);
    takeOne(limits.sender, token);
    const view = await enter(await database(), share, token, name, timeNow());
    return { ...view, now: timeNow() };
  });
