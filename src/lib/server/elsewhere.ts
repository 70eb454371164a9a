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
  return origin !== null && hostOf(origin) !== host;
}

/** The scheme is left out: a proxy may speak https without our knowing. */
function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
