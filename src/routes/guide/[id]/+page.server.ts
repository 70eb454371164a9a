import { assignmentOf } from '$lib/server/assignments';
import { database, guideOfPage } from '$lib/server/http';
import { clientProgressOf } from '$lib/server/progress';
import { phoneAddressOf } from '$lib/server/reach';
import { standingsOf } from '$lib/server/standing';
import { error } from '@sveltejs/kit';
import { briefly, inOrder, pageOf } from '$lib/app/guide';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const assignment = await assignmentOf(db, guide, event.params.id);
  if (!assignment) error(404, 'That homework isn’t here.');
  const standings = inOrder(await standingsOf(db, assignment), '');
  const asked = Number(event.url.searchParams.get('page') ?? 1);
  const { page, pages, shown } = pageOf(standings, asked);
  const clients = await clientProgressOf(
    db,
    assignment,
    shown.map(({ id }) => id)
  );
  const briefs = Object.fromEntries(clients.map((one) => [one.client.id, briefly(one)]));
  return { assignment, reach: phoneAddressOf(event), standings, page, pages, briefs };
};
