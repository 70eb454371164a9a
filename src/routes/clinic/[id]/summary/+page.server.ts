import { roomHomework } from '$lib/server/assignments';
import { clinicSummaryOf } from '$lib/server/clinic-summary';
import { database, guideOfPage, refusalOf, timeNow } from '$lib/server/http';
import { phoneAddressOf } from '$lib/server/reach';
import { roomOf } from '$lib/server/rooms';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const prerender = false;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  try {
    const room = await roomOf(db, guide, event.params.id);
    const summary = await clinicSummaryOf(db, room);
    const { origin } = phoneAddressOf(event);
    const along = await roomHomework(db, guide, room.state.homework, origin, timeNow());
    return { guide: guide.name, id: room.id, summary, ...along };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};
