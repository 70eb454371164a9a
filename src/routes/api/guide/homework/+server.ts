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
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const setting = v.strictObject({ task: v.unknown() });

/** Sets homework. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { task } = await bodyOf(event, setting);
    takeOne(limits.setting, addressOf(event));
    const parsed = parseAssignment(task, 'task');
    return { id: await createAssignment(await database(), guide, parsed, timeNow()) };
  });
