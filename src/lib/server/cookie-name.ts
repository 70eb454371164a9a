import type { RequestEvent } from '@sveltejs/kit';

/**
 * Under https a browser binds a cookie of such a name to the very host that set it: a page under a sister
 * name, or one on plain http, can then neither set it nor put its own in its place.
 */
const BOUND = '__Host-';

/** What a cookie of ours is called where this was asked. It needs Path=/ there. */
export const cookieName = (name: string, { url }: Pick<RequestEvent, 'url'>): string =>
  url.protocol === 'https:' ? BOUND + name : name;
