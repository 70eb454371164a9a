import { homeOf } from '$lib/server/clinic-home';
import { answering, bodyOf, database, takeOne } from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const asking = v.strictObject({ link: v.pipe(v.string(), v.maxLength(100)) });

/** What one phone did in a clinic, for its owner's record on another device. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { link } = await bodyOf(event, asking);
    takeOne(limits.sender, link);
    return homeOf(await database(), link);
  });
