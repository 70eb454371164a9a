import { parseAssignment } from '$lib/practice';
import { createAssignment } from '$lib/server/assignments';
import {
  addressOf,
  answering,
  bodyOf,
  database,
  guideFrom,
  takeOne,
  timeNow
} from '$lib/server/http';
import { limits } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { homeworkOrder } from '$lib/wire';

export const prerender = false;

/** Sets homework. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { task } = await bodyOf(event, homeworkOrder.set);
    takeOne(limits.setting, addressOf(event));
    const parsed = parseAssignment(task, 'task');
    return { id: await createAssignment(await database(), guide, parsed, timeNow()) };
  });
