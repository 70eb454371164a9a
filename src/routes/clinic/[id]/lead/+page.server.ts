import { screenViewOf } from '$lib/server/clinic-view';
import { database, guideOfPage, refusalOf, timeNow } from '$lib/server/http';
import { roomOf } from '$lib/server/rooms';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const prerender = false;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  try {
    const { id, code } = await roomOf(db, guide, event.params.id);
    return { id, code, view: await screenViewOf(db, id, timeNow()) };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};
