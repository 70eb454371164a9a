import { sharedAssignment } from '$lib/server/clients';
import { answering, bodyOf, database } from '$lib/server/http';
import { token } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const looking = v.strictObject({ share: token });

/** What is asked by a link, for somebody who has not given a name yet. Makes nobody a client. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share } = await bodyOf(event, looking);
    const { task, closed_at } = await sharedAssignment(await database(), share);
    return { task, closed_at };
  });
