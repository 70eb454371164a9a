import { sharedAssignment } from '$lib/server/clients';
import { answering, bodyOf, database } from '$lib/server/http';
import type { RequestHandler } from './$types';
import { homeworkRequest } from '$lib/wire';

export const prerender = false;

/** What is asked by a link, for somebody who has not given a name yet. Makes nobody a client. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share } = await bodyOf(event, homeworkRequest.look);
    const { task, closed_at } = await sharedAssignment(await database(), share);
    return { task, closed_at };
  });
