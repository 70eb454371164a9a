import { phoneViewFor } from '$lib/server/clinic-view';
import {
  addressOf,
  answering,
  bodyOf,
  database,
  roomAsked,
  takeOne,
  timeNow
} from '$lib/server/http';
import { admit } from '$lib/server/rooms';
import { limits, runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** A phone comes into the room, or comes back to its seat. The seat's id is for the feed. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { token } = await bodyOf(event, clinicRequest.join);
    takeOne(limits.sender, token);
    const room = await roomAsked(event);
    const address = addressOf(event);
    const refuseCrowd = () => takeOne(limits.seats, `${room.id} ${address}`);
    const seat = await admit(await database(), room, token, timeNow(), { address, refuseCrowd });
    (await runtime()).feed.changed(room.id);
    return { ...(await phoneViewFor(room)), seat };
  });
