import type { Cookies, RequestEvent } from '@sveltejs/kit';

/** A browser's jar of cookies, as far as endpoints use it. */
export class Jar {
  readonly kept = new Map<string, { value: string; options: Record<string, unknown> }>();

  get = (name: string) => this.kept.get(name)?.value;
  set = (name: string, value: string, options: Record<string, unknown>) =>
    void this.kept.set(name, { value, options });
  delete = (name: string) => void this.kept.delete(name);
}

interface Asked {
  method?: string;
  body?: unknown;
  jar?: Jar;
  params?: Record<string, string>;
  address?: string;
  path?: string;
}

/** What an endpoint is handed, for calling it without a server. */
export function eventOf({
  method = 'POST',
  body,
  jar = new Jar(),
  params = {},
  address = '127.0.0.1',
  path = '/'
}: Asked) {
  const url = new URL(path, 'http://localhost');
  const request = new Request(url, {
    method,
    headers: { 'content-type': 'application/json' },
    body: body === undefined ? undefined : JSON.stringify(body)
  });
  const event = {
    request,
    url,
    params,
    cookies: jar as unknown as Cookies,
    getClientAddress: () => address
  };
  return event as unknown as RequestEvent;
}
