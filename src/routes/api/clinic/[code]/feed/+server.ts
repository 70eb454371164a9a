import { phoneViewFor } from '$lib/server/clinic-view';
import { addressOf, answering, database, roomAsked, streamed } from '$lib/server/http';
import { isParticipantIn, roomById } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/**
 * What the phones of a room show, as it changes. Who can see the screen may see this. The seat is named
 * for its place among the feeds alone: it opens nothing.
 */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const db = await database();
    const { id } = await roomAsked(event);
    const named = event.url.searchParams.get('seat');
    const seat =
      named !== null && (await isParticipantIn(db, { room: id, id: named })) ? named : null;
    const { feed } = await runtime();
    const view = async () => phoneViewFor(await roomById(db, id));
    const from = addressOf(event);
    return streamed(event, () => feed.stream(id, { key: 'phone', view, from, seat }));
  });
