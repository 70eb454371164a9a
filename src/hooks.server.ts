import { building } from '$app/environment';
import { isFromElsewhere } from '$lib/server/elsewhere';
import { describeError, log } from '$lib/server/log';
import { metrics } from '$lib/server/runtime';
import { SecurityLog } from '$lib/server/security-log';
import { json, type Handle, type HandleServerError } from '@sveltejs/kit';

const security = new SecurityLog();

/** Scripts, styles, and the upright fonts, which every page shows at once; italics come when they are met. */
const isOfFirstSight = ({ type, path }: { type: string; path: string }) =>
  type !== 'font' ? type === 'js' || type === 'css' : !path.includes('italic');

/**
 * Counts and times every answer, keeps whatever belongs to somebody out of every cache, and refuses
 * what another page had a guide's browser send.
 */
export const handle: Handle = async ({ event, resolve }) => {
  const from = performance.now();
  const response = isFromElsewhere(event.request, event.url.host)
    ? json({ error: 'This was sent by another page.' }, { status: 403 })
    : await resolve(event, { preload: isOfFirstSight });
  if (building) return response;
  const { method } = event.request;
  security.note({ method, route: event.route.id ?? '', status: response.status });
  metrics.answered(response.status, (performance.now() - from) / 1000);
  if (!response.headers.has('cache-control')) {
    response.headers.set('cache-control', 'private, no-store');
  }
  return response;
};

/** What nobody foresaw: told to the log by kind and place, to the visitor not at all. */
export const handleError: HandleServerError = ({ error, event, status }) => {
  if (status !== 404)
    log('fault', { status, route: event.route.id ?? '', ...describeError(error) });
  return { message: status === 404 ? 'There is nothing here.' : 'Something went wrong here.' };
};
