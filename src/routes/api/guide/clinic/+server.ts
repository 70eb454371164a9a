import { loadLessons } from '$lib/course';
import { PLAN_MINUTES, planFor, PREPARED } from '$lib/server/clinic-plan';
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
import { label } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const opening = v.strictObject({
  minutes: v.picklist(PLAN_MINUTES),
  /** Ids; without them, those of the prepared plan. */
  lessons: v.optional(v.pipe(v.array(label), v.maxLength(20)))
});

/** Opens a clinic with a plan of so many minutes. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { minutes, lessons } = await bodyOf(event, opening);
    takeOne(limits.setting, addressOf(event));
    const plan = planFor(minutes, lessons ?? PREPARED[minutes], loadLessons(), Math.random);
    const id = await createRoom(await database(), guide, plan, timeNow());
    void prepare(plan);
    return { id };
  });
