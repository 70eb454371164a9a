import { answering } from '$lib/server/http';
import { refuseStranger } from '$lib/server/metrics-key';
import { metrics } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** Counters, for who has the key; without one, for this machine. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    refuseStranger(event, process.env.FELTFOOT_METRICS_KEY);
    const bytes = process.memoryUsage().rss;
    const text = `${metrics.toText()}feltfoot_memory_bytes ${bytes}\n`;
    return new Response(text, { headers: { 'content-type': 'text/plain; version=0.0.4' } });
  });
