import { clinicSummaryOf } from '$lib/server/clinic-summary';
import { database, guideOfPage, refusalOf } from '$lib/server/http';
import { roomOf } from '$lib/server/rooms';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const prerender = false;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  try {
    const room = await roomOf(db, guide, event.params.id);
    return { guide: guide.name, id: room.id, summary: await clinicSummaryOf(db, room) };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};
