import { comeBack, enter } from '$lib/server/clients';
import { answering, bodyOf, database, takeOne, timeNow } from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import { line, token } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

/** `isBack` says a phone that has been told its homework before. */
const entering = v.strictObject({
  share: token,
  token,
  name: line(40),
  isBack: v.optional(v.boolean(), false)
});

/** A client's phone comes to its homework, the first time or again. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token, name, isBack } = await bodyOf(event, entering);
    takeOne(limits.sender, token);
    const db = await database();
    const view = isBack
      ? await comeBack(db, share, token)
      : await enter(db, share, token, name, timeNow());
    return { ...view, now: timeNow() };
  });
