import { answering, bodyOf, database, deleting, guideFrom, timeNow } from '$lib/server/http';
import { refuseNotOwn } from '$lib/server/assignments';
import { act, deleteRoom } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicAction } from '$lib/wire';

export const prerender = false;

/** The instructor does something with the room. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const asked = await bodyOf(event, clinicAction);
    const db = await database();
    if (asked.do === 'homework' && asked.id !== null) await refuseNotOwn(db, guide, asked.id);
    await act(db, guide, event.params.id, asked, timeNow());
    (await runtime()).feed.changed(event.params.id);
  });

export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    await deleting((db) => deleteRoom(db, guide, event.params.id));
  });
