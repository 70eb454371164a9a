import { loadLessons } from '$lib/course';
import { PLAN_MINUTES, planFor } from '$lib/server/clinic-plan';
import { answering, bodyOf, database, guideFrom, timeNow } from '$lib/server/http';
import { createRoom } from '$lib/server/rooms';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const opening = v.strictObject({ minutes: v.picklist(PLAN_MINUTES) });

/** Opens a clinic with a plan of so many minutes. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { minutes } = await bodyOf(event, opening);
    const plan = planFor(minutes, loadLessons());
    return { id: await createRoom(await database(), guide, plan, timeNow()) };
  });
