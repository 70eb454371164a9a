import { loadLessons } from '$lib/course';
import { planFor, PREPARED } from '$lib/server/clinic-plan';
import { prepare } from '$lib/server/clinic-poll';
import {
  addressOf,
  answering,
  bodyOf,
  database,
  guideFrom,
  takeOne,
  timeNow
} from '$lib/server/http';
import { createRoom } from '$lib/server/rooms';
import { limits } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** Opens a clinic with a plan of so many minutes. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { name, minutes, lessons } = await bodyOf(event, clinicRequest.open);
    const address = addressOf(event);
    takeOne(limits.setting, address);
    const plan = planFor(minutes, lessons ?? PREPARED[minutes], loadLessons(), Math.random);
    const id = await createRoom(await database(), guide, { name, plan }, timeNow());
    void prepare(plan, { space: guide.space, address });
    return { id };
  });
