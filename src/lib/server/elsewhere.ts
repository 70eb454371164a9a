/** Methods that change nothing. */
const HARMLESS = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Whether a page of somebody else's had the browser send this. To a cookie a page on another port of
 * this machine, or under a sister name, is at home here; and a request without a body needs no leave.
 * @param host name and port by which we were asked
 */
export function isFromElsewhere({ method, headers }: Request, host: string): boolean {
  if (HARMLESS.has(method)) return false;
  // Browsers say this only over https and on localhost.
  const site = headers.get('sec-fetch-site');
  if (site) return site !== 'same-origin' && site !== 'none';
  const origin = headers.get('origin');
  if (origin === null) return false;
  // Some browsers name no origin where a page sends no referrer, as ours do. A page of somebody else's
  // needs leave to send JSON, and gets none.
  if (isJson(headers) && origin === 'null') return false;
  return !isAt(origin, host);
}

export function isJson(headers: Headers): boolean {
  return /^application\/json\b/i.test(headers.get('content-type') ?? '');
}

/** The scheme is left out: a proxy may speak https without our knowing. */
function isAt(origin: string, host: string): boolean {
  return URL.canParse(origin) && new URL(origin).host === host;
}
