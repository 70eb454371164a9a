/// <reference types="@sveltejs/kit" />
/// <reference lib="webworker" />
import { base, build, files, prerendered, version } from '$service-worker';

// TypeScript gives every file the window's types; this one runs in a worker.
const worker = self as unknown as ServiceWorkerGlobalScope;

const cacheName = `feltfoot-${version}`;
const kept = new Set([...build, ...files, ...prerendered]);

worker.addEventListener('install', (event) => {
  // No skipWaiting: pages of the version before still need its files. See routes/new-version.ts.
  event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll([...kept])));
});

worker.addEventListener('message', (event) => {
  if (event.data === 'take over') worker.skipWaiting();
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(forgetOlderVersions().then(() => worker.clients.claim()));
});

/**
 * All but this version and the newest of the others: a page of that one may be open in another tab, and asks
 * for parts of its own that no server has any more. Versions are times, of as many digits for centuries.
 */
async function forgetOlderVersions(): Promise<void> {
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith('feltfoot-') && name !== cacheName);
  await Promise.all(
    others
      .sort()
      .slice(0, -1)
      .map((name) => caches.delete(name))
  );
}

worker.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== worker.location.origin) return;
  const path = keptPath(url.pathname);
  if (path) event.respondWith(fromCache(path, event.request));
  else if (url.pathname.startsWith(`${base}/_app/immutable/`))
    event.respondWith(ofAny(event.request));
  else if (event.request.mode === 'navigate') event.respondWith(fromServer(event.request));
});

/** A page is kept under one address, whatever its query or a slash too many says. */
function keptPath(pathname: string): string | undefined {
  const bare = pathname.replace(/\/$/, '');
  return [pathname, bare, `${bare}/`].find((path) => kept.has(path));
}

async function fromCache(path: string, request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  // Browsers do drop single entries when the disk runs full.
  return (await cache.match(path)) ?? fetch(request);
}

/** A file's name tells its content: whichever version kept it, it is that one. */
async function ofAny(request: Request): Promise<Response> {
  return (await caches.match(request)) ?? fetch(request);
}

/** Pages with live data have no kept copy; offline, the app says so rather than the browser. */
async function fromServer(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch {
    const cache = await caches.open(cacheName);
    const page = await cache.match(keptPath(`${base}/no-connection`) ?? '');
    // Its own status: whoever asks by program must not take it for the page that was asked for.
    return new Response(page?.body ?? 'No connection.', {
      status: 503,
      headers: { 'Content-Type': page ? 'text/html; charset=utf-8' : 'text/plain' }
    });
  }
}
