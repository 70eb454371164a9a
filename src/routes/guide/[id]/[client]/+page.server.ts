import { assignmentOf } from '$lib/server/assignments';
import { database, guideOfPage } from '$lib/server/http';
import { clientProgressOf } from '$lib/server/progress';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const assignment = await assignmentOf(db, guide, event.params.id);
  if (!assignment) error(404, 'That homework isn’t here.');
  const [found] = await clientProgressOf(db, assignment, [event.params.client]);
  if (!found) error(404, 'This client isn’t here, or asked to be deleted.');
  const { title, tries, questions, phase, due } = assignment.task;
  return { title, asked: { tries, questions, phase, due }, ...found };
};
