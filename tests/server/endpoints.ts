import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { RequestEvent } from '@sveltejs/kit';
import { afterAll, beforeAll } from 'vitest';
import { runtime } from '../../src/lib/server/runtime';
import { newToken } from '../../src/lib/server/token';
import { eventOf, Jar } from './events';
import { sampleTask } from './samples';

type Handler = (event: RequestEvent) => Response | Promise<Response>;
type Endpoint = Partial<Record<'GET' | 'POST' | 'PATCH' | 'DELETE', Handler>>;
type Page = { load: (event: RequestEvent) => Promise<unknown> };
const METHODS = ['GET', 'POST', 'PATCH', 'DELETE'] as const;
export type Asked = Parameters<typeof eventOf>[0];

function byPath<T>(files: Record<string, T>): Map<string, T> {
  const paths = Object.entries(files).map(([file, module]) => {
    const path = file.replace(/^.*\/routes/, '').replace(/\/\+(server|page\.server)\.ts$/, '');
    return [path, module] as const;
  });
  return new Map(paths);
}

export const endpoints = byPath(
  import.meta.glob<Endpoint>('../../src/routes/**/+server.ts', { eager: true })
);
/** Those that hand out what a server knows: a list of what there is to write at build time does not. */
export const pages = new Map(
  [
    ...byPath(
      import.meta.glob<Partial<Page>>('../../src/routes/**/+page.server.ts', { eager: true })
    )
  ].filter((page): page is [string, Page] => page[1].load !== undefined)
);

/** Every address of ours with each method that it takes. */
export const addresses = [...endpoints].flatMap(([path, endpoint]) =>
  METHODS.filter((method) => endpoint[method]).map((method) => ({ method, path }))
);

/** Gives this file's endpoints a store of their own, and closes it behind them. */
export function withStore(): void {
  const folder = mkdtempSync(join(tmpdir(), 'feltfoot-api-'));
  beforeAll(() => {
    delete process.env.DATABASE_URL;
    process.env.FELTFOOT_DATA = folder;
  });
  afterAll(async () => {
    await runtime();
    const closing: Promise<void>[] = [];
    process.emit('sveltekit:shutdown' as never, 'test' as never, closing as never);
    await Promise.all(closing);
    rmSync(folder, { recursive: true, force: true });
  });
}

/** Asks an endpoint. A feed is read as far as its first view. */
export async function ask(path: string, asked: Asked) {
  const method = asked.method ?? 'POST';
  const handler = endpoints.get(path)?.[method as 'POST'];
  if (!handler) throw new Error(`no ${method} ${path}`);
  const response = await handler(eventOf(asked));
  const isFeed = response.headers.get('content-type') === 'text/event-stream';
  const body = isFeed ? await firstView(response) : await response.text();
  return { status: response.status, body };
}

async function firstView(response: Response): Promise<string> {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  for (let text = ''; ;) {
    const { value, done } = (await reader?.read()) ?? { done: true };
    text += value ?? '';
    if (!done && !text.includes('data: ')) continue;
    await reader?.cancel();
    return text;
  }
}

/** Loads a page. @returns its data, or where it leads or what it refuses instead */
export async function load(path: string, asked: Asked) {
  const page = pages.get(path);
  if (!page) throw new Error(`no page ${path}`);
  try {
    const data = await page.load(eventOf({ ...asked, method: 'GET' }));
    return { status: 200, body: JSON.stringify(data ?? {}) };
  } catch (thrown) {
    const { status, location, body } = thrown as Record<string, unknown>;
    if (!status) throw thrown;
    return { status, body: JSON.stringify(location ?? body) };
  }
}

export async function newGuide(name: string) {
  const jar = new Jar();
  const { body } = await ask('/api/guide/space', { body: { name }, jar, address: newToken() });
  return { jar, secret: JSON.parse(body).secret as string };
}

export async function newHomework(jar: Jar): Promise<string> {
  const { body } = await ask('/api/guide/homework', { body: { task: sampleTask }, jar });
  return JSON.parse(body).id;
}

export async function shareOf(jar: Jar, id: string): Promise<string> {
  const { body } = await load('/guide/[id]', { jar, params: { id } });
  return JSON.parse(body).assignment.share;
}

/** A guide’s clinic at its first question. */
export async function newClinic(jar: Jar) {
  const { id } = JSON.parse((await ask('/api/guide/clinic', { body: { minutes: 45 }, jar })).body);
  const params = { id };
  for (let to = 1; ; to++) {
    await ask('/api/guide/clinic/[id]', { body: { do: 'go', to }, jar, params });
    const { code, view } = JSON.parse((await load('/clinic/[id]', { jar, params })).body);
    if (view.shown.kind !== 'predict') continue;
    return { id, code: code as string, view };
  }
}
