import { clearSilent } from '$lib/server/admission';
import { parseData } from '$lib/scoring';
import { answering, deleting, guideFrom } from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import { silentCrowd } from '$lib/wire';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const crowdAsked = v.pick(silentCrowd, ['group', 'minute']);

/** Takes out the seats that have answered nothing: all, or those of the group and minute in the address. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const asked = [...event.url.searchParams];
    const crowd = asked.length > 0 ? parseData(crowdAsked, Object.fromEntries(asked)) : undefined;
    await deleting((db) => clearSilent(db, guide, event.params.id, crowd));
    (await runtime()).feed.changed(event.params.id);
  });
