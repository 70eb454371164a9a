import { createAssignment } from '$lib/server/assignments';
import { answering, bodyOf, database, guideFrom, timeNow } from '$lib/server/http';
import { parseTask } from '$lib/server/task';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const setting = v.strictObject({ task: v.unknown() });

/** Sets homework. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { task } = await bodyOf(event, setting);
    return { id: await createAssignment(await database(), guide, parseTask(task), timeNow()) };
  });
