import { assignmentOf } from '$lib/server/assignments';
import { database, guideOfPage } from '$lib/server/http';
import { progressOf, type ClientProgress } from '$lib/server/progress';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const assignment = await assignmentOf(db, guide, event.params.id);
  if (!assignment) error(404, 'There is no such homework.');
  const clients = await progressOf(db, assignment);
  return { assignment, clients: clients.map(briefly) };
};

/** Without the rod inputs, which only the page of one client shows. */
function briefly({ challenges, ...rest }: ClientProgress) {
  const brief = challenges.map(({ challenge, tries, ...standing }) => ({
    ...standing,
    id: challenge.id,
    title: challenge.title,
    tries: tries.length,
    contact: tries.length
      ? tries.reduce((sum, { graded }) => sum + graded.contact, 0) / tries.length
      : null
  }));
  return { ...rest, challenges: brief };
}
