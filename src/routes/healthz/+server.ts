import { json } from '@sveltejs/kit';
import { computeState } from '$lib/server/compute';
import { healthOf } from '$lib/server/health';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** 200 when the store answers, else 503, within a second; and how those who grade are. */
export const GET: RequestHandler = async () => {
  const store = runtime().then((running) => running.store);
  const health = await healthOf(store, computeState());
  return json(health, { status: health.well ? 200 : 503 });
};
