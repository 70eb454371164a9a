import { homeOf } from '$lib/server/clinic-home';
import { answering, bodyOf, database, takeOne } from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** What one phone did in a clinic, for its owner's record on another device. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { link } = await bodyOf(event, clinicRequest.home);
    takeOne(limits.sender, link);
    return homeOf(await database(), link);
  });
