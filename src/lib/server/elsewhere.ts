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
  // Another page needs leave to send JSON, and gets none. Our own always do; what some browsers and
  // proxies make of Origin and Host must not shut them out.
  if (isJson(headers)) return false;
  const origin = headers.get('origin');
  return origin !== null && hostOf(origin) !== host;
}

export function isJson(headers: Headers): boolean {
  return /^application\/json\b/i.test(headers.get('content-type') ?? '');
}

/** The scheme is left out: a proxy may speak https without our knowing. */
function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
