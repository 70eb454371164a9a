import { error, json, redirect, type RequestEvent } from '@sveltejs/kit';
import type * as v from 'valibot';
import { ScenarioError } from '../model';
import { DataError, parseData } from '../scoring';
import { networkOf } from './code-guard';
import { cookieName } from './cookie-name';
import { isJson } from './elsewhere';
import { Refusal, storeTrouble } from './faults';
import { depthOf, MOST_DEPTH } from './json-depth';
import { describeError, log } from './log';
import type { RateLimiter } from './rate-limit';
import { alive, kept, roomByCode, type Room } from './rooms';
import { codes, runtime } from './runtime';
import { guideOf, SESSION_DAYS, type Guide } from './spaces';
import type { Db } from './store';

const COOKIE = 'feltfoot_guide';
const DAY_S = 86_400;

export const timeNow = () => new Date().toISOString();

/** Lets an endpoint work, and says in JSON what it refused and why. */
export async function answering(work: () => Promise<unknown>): Promise<Response> {
  try {
    const answer = await work();
    return answer instanceof Response ? answer : json(answer ?? { done: true });
  } catch (fault) {
    const { status, message, retryAfter_s: wait_s } = refusalOf(fault);
    const headers = wait_s === undefined ? undefined : { 'retry-after': String(wait_s) };
    return json({ error: message }, { status, headers });
  }
}

/** Throws on what is none of the sender's business to know. */
export function refusalOf(fault: unknown): Refusal {
  if (fault instanceof Refusal) return fault;
  if (fault instanceof DataError || fault instanceof ScenarioError) {
    return new Refusal(422, fault.message);
  }
  const trouble = storeTrouble(fault);
  if (!trouble) throw fault;
  log('store trouble', { status: trouble.status, ...describeError(fault) });
  return trouble;
}

/** The request's body, checked. Only JSON: a form on another site cannot send that unasked. */
export async function bodyOf<S extends v.GenericSchema>(
  { request }: Pick<RequestEvent, 'request'>,
  schema: S
): Promise<v.InferOutput<S>> {
  if (!isJson(request.headers)) {
    throw new Refusal(415, 'Send JSON.');
  }
  const text = await textOf(request);
  if (depthOf(text) > MOST_DEPTH) throw new Refusal(400, 'This JSON is nested too deep.');
  try {
    return parseData(schema, JSON.parse(text));
  } catch (fault) {
    if (fault instanceof SyntaxError) throw new Refusal(400, 'This isn’t JSON.');
    throw fault;
  }
}

/** The server in front counts the bytes and breaks off a body that is larger than anything of ours. */
async function textOf(request: Request): Promise<string> {
  try {
    return await request.text();
  } catch (fault) {
    if ((fault as { status?: unknown }).status === 413) throw new Refusal(413, 'This is too big.');
    throw fault;
  }
}

export async function database(): Promise<Db> {
  return (await runtime()).store.db;
}

/** Does work that deletes, so that it works on a full disk and leaves nothing behind. */
export async function deleting<T>(work: (db: Db) => Promise<T>): Promise<T> {
  const { store } = await runtime();
  return store.deleting(() => work(store.db));
}

export function takeOne(limiter: Pick<RateLimiter, 'take'>, key: string): void {
  if (!limiter.take(key, Date.now())) throw new Refusal(429, 'Too many tries. Wait a minute.');
}

/** Where a request comes from, as far as limits go. */
export const addressOf = (event: Pick<RequestEvent, 'getClientAddress'>) =>
  networkOf(event.getClientAddress());

/** What is found by the code in the address, dead or alive. Links are past guessing; a code is not. */
export async function byCode<T>(
  event: RequestEvent<{ code: string }>,
  find: (code: string) => Promise<T | null>
): Promise<T | null> {
  const { code } = event.params;
  const address = addressOf(event);
  if (!codes.mayTry(address, code, Date.now())) {
    throw new Refusal(429, 'Too many wrong codes from here. Wait a few minutes.');
  }
  const found = await find(code);
  // A dead code is no guess: yesterday's phones, left open, ask for it again and again.
  if (found) codes.wasRight(address, code);
  else codes.wasWrong(address, Date.now());
  return found;
}

/** The clinic whose code stands in the address, as long as it is kept. */
export async function roomKept(event: RequestEvent<{ code: string }>): Promise<Room> {
  const db = await database();
  return kept(await byCode(event, (code) => roomByCode(db, code)));
}

/** The same while it is alive. */
export async function roomAsked(event: RequestEvent<{ code: string }>): Promise<Room> {
  const db = await database();
  return alive(await byCode(event, (code) => roomByCode(db, code)), timeNow());
}

type WithCookies = Pick<RequestEvent, 'cookies' | 'url'>;

/** The guide who asks. Refuses without a valid cookie. */
export async function guideFrom(event: WithCookies): Promise<Guide> {
  const guide = await guideOf(await database(), cookieOf(event), timeNow());
  if (!guide) throw new Refusal(401, 'Open your space with your link or key file first.');
  return guide;
}

/** The same for a page: who has no cookie is led to the door. */
export async function guideOfPage(event: WithCookies): Promise<Guide> {
  try {
    return await guideFrom(event);
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    if (status === 401) redirect(303, '/guide');
    error(status, message);
  }
}

/** What kind of machine asks, as it says itself; nothing finer is kept. */
export function deviceOf({ request: { headers } }: Pick<RequestEvent, 'request'>) {
  const isMobile =
    headers.get('sec-ch-ua-mobile') === '?1' || /Mobi/.test(headers.get('user-agent') ?? '');
  return isMobile ? 'phone' : 'computer';
}

export const cookieOf = (event: WithCookies) => event.cookies.get(cookieName(COOKIE, event));

/** Name and origin by which we were asked: one of ours, since the server in front refuses others. */
export const siteOf = ({ url }: Pick<RequestEvent, 'url'>) => {
  return { host: url.hostname, origin: url.origin };
};

export function setCookie(event: RequestEvent, token: string): void {
  event.cookies.set(cookieName(COOKIE, event), token, {
    path: '/',
    httpOnly: true,
    sameSite: 'lax',
    secure: event.url.protocol === 'https:',
    maxAge: SESSION_DAYS * DAY_S
  });
}

export function dropCookie(event: WithCookies): void {
  // A cookie of such a name is taken from Secure headers alone, also to be dropped.
  const secure = event.url.protocol === 'https:';
  event.cookies.delete(cookieName(COOKIE, event), { path: '/', secure });
}

/** Server-sent events that no proxy holds back. Who asks for the head alone listens to nothing. */
export function streamed(
  { request }: Pick<RequestEvent, 'request'>,
  events: () => ReadableStream<Uint8Array>
): Response {
  return new Response(request.method === 'HEAD' ? null : events(), {
    headers: {
      'content-type': 'text/event-stream',
      'cache-control': 'no-store',
      'x-accel-buffering': 'no'
    }
  });
}
