import { roomHomework } from '$lib/server/assignments';
import { screenViewOf } from '$lib/server/clinic-view';
import { database, guideOfPage, refusalOf, timeNow } from '$lib/server/http';
import { phoneAddressOf } from '$lib/server/reach';
import { roomOf } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const prerender = false;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  try {
    const { id, code, state } = await roomOf(db, guide, event.params.id);
    const reach = phoneAddressOf(event);
    const { homework } = await roomHomework(db, guide, state.homework, reach.origin, timeNow());
    const { feed } = await runtime();
    const view = await screenViewOf(db, id, timeNow(), feed.away(id));
    return { id, code, reach, homework, view };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};
