import { comeBack, enter } from '$lib/server/clients';
import { answering, bodyOf, database, takeOne, timeNow } from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { homeworkRequest } from '$lib/wire';

export const prerender = false;

/** A client's phone comes to its homework, the first time or again. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token, name, isBack } = await bodyOf(event, homeworkRequest.enter);
    takeOne(limits.sender, token);
    const db = await database();
    const view = isBack
      ? await comeBack(db, share, token)
      : await enter(db, share, token, name, timeNow());
    return { ...view, now: timeNow() };
  });
