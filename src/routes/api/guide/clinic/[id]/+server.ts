import { answering, bodyOf, database, guideFrom, timeNow } from '$lib/server/http';
import { act, deleteRoom } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import { label, madeId } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const count = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));

const action = v.variant('do', [
  v.strictObject({ do: v.literal('go'), to: count(100) }),
  v.strictObject({
    do: v.picklist(['hold', 'open', 'hint', 'talk', 'reveal', 'again', 'end', 'resume'])
  }),
  v.strictObject({ do: v.literal('hands'), option: label, count: count(1000) }),
  v.strictObject({ do: v.literal('show'), id: v.nullable(madeId) })
]);

/** The instructor does something with the room. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const asked = await bodyOf(event, action);
    await act(await database(), guide, event.params.id, asked, timeNow());
    (await runtime()).feed.changed(event.params.id);
  });

export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    await deleteRoom(await database(), await guideFrom(event), event.params.id);
  });
