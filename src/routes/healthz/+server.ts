import { answering, database } from '$lib/server/http';
import type { RequestHandler } from './$types';

export const prerender = false;

/** 200 when the store answers. */
export const GET: RequestHandler = () =>
  answering(async () => {
    await (await database()).selectFrom('spaces').select('id').limit(1).execute();
    return { well: true };
  });
