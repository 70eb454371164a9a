import { metrics } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

export const GET: RequestHandler = () => {
  const bytes = process.memoryUsage().rss;
  const text = `${metrics.toText()}feltfoot_memory_bytes ${bytes}\n`;
  return new Response(text, { headers: { 'content-type': 'text/plain; version=0.0.4' } });
};
