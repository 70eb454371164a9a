import { assignmentOf } from '$lib/server/assignments';
import { database, guideOfPage } from '$lib/server/http';
import { progressOf } from '$lib/server/progress';
import { reachOf } from '$lib/server/reach';
import { error } from '@sveltejs/kit';
import { briefly } from './clients';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const assignment = await assignmentOf(db, guide, event.params.id);
  if (!assignment) error(404, 'There is no such homework.');
  const clients = await progressOf(db, assignment);
  return { assignment, reach: reachOf(event), clients: clients.map(briefly) };
};
